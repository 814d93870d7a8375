/**
 * What findings say, made from names, measures and days that are already text. `check` of each is
 * the name of the check in a list; whatever else it has are titles and whole sentences.
 */
import { counted } from "./plurals.ts";

/** Names that no object gives. */
export const bed = (code: string) => `bed ${code}`;
export const site = "the site";
export const thisKind = "this kind";
export const andMore = (one: string, other: string, more: number) =>
  `${one}, ${other} and ${more} more`;
export const measuredOf = (measured: string, required: string) => `${measured} of ${required}`;
export const span = (first: string, last: string) => `${first} to ${last}`;

/** Isolation: too close, no dates, no figure, kept apart by unsure dates alone. */
export const isolation = "Plantings that would cross are too close";
export const missingBloom = "Bloom dates are missing";
export const missingFigure = "No isolation distance is known";
export const ownDistance = "An own distance is far below what is published";
export const noBloom = (name: string) => `${name} has no bloom dates`;
export const onlyTime = (nearness: string) =>
  `It lies ${nearness}, so only time could keep them apart, and that cannot be told without dates.`;
export const unsure = "Only a rule of thumb keeps blooms apart";
export const unsureTitle = (later: string, earlier: string) =>
  `${later} and ${earlier} are kept apart by unchecked dates alone`;
export const between = (gap: string, wanted: string, rests: string) =>
  `By the dates reckoned ${gap} lie between their blooms and ${wanted} are wanted, but ${rests}.`;
export const watchElse = (watch: string, ifNot: string) => `${watch}. If not: ${ifNot}.`;
export const clearInTime = (name: string) =>
  `Clear ${name} in time and write it down: as grown the plan then rests on it.`;
export const typeDates =
  "Type the bloom dates or the variety's own days to flower and of bloom, and they carry it.";

export const mixingCheck = "Plantings lie so near that plants or harvest mix";
export const inEachOther = "They lie in each other.";
export const apart = (measured: string, required: string) =>
  `${measured} apart, ${required} keep them apart.`;
export const cited = (source: string, said: string) => `${source}: ${said}.`;
export const sameName = (other: string, stock: string) =>
  `${other} of the same name stands beside stock seed ${stock}`;
export const sameNameAdvice =
  "A stand of a name is not always true to it. If it is of your own stock, enter both as one variety; otherwise move, cover or harvest well inside.";
export const near = (one: string, other: string) =>
  `${one} and ${other} lie so near that plants or harvest mix`;
export const nearAdvice =
  "Pollen asks for no distance here, but plants lean over, pods shatter and rows are harvested together: leave a strip or put another crop between.";

export const seasonCheck = "Dates lie outside the season";
export const title = (name: string) => `${name} has dates of another season`;
export const seasonOutside = (what: string, dates: string, season: string) =>
  `${what}, ${dates}, lies outside the season, ${season}.`;
export const untold = (others: string) =>
  `Whether it flowers together with ${others} cannot be told from dates of different years, so time clears nothing.`;
export const advice =
  "Type the dates of this season, or change the season in Plan settings, where all dates can move along.";
export const bloom = "The bloom typed";
export const predicted = "The bloom predicted";
export const start = "The day it is sown or set out";
export const glass = "The day it is sown under glass";
export const end = "The day it is cleared";
export const spring = "The last spring frost";
export const autumn = "The first autumn frost";

/** Where things lie, and how many there are on it. */
export const placeOutside =
  "A planting reaches out of its bed or lies in none, or a bed reaches out of the site";
export const noBed = (name: string) => `${name} lies in no bed`;
export const noBedAdvice =
  "Move it onto a bed, choose its bed in its particulars, or draw a bed under it.";
export const reachesOut = (inner: string, outer: string) => `${inner} reaches out of ${outer}`;
export const sticksOut = (length: string) => `It sticks out by ${length}.`;
export const overlap = "Two plantings lie on the same ground";
export const sameGround = (names: string) => `${names} lie on the same ground`;
export const overlapBy = (length: string) => `They overlap by ${length}.`;
export const crowded = "A planting holds far more plants than fit at its kind's spacing";
export const holds = (name: string, plants: number, fits: number) =>
  `${name} holds ${counted(plants, { one: "plant", other: "plants" })} where ${fits} fit`;
export const takes = (inRow: string, betweenRows: string, source: string, fits: number) =>
  `At ${inRow} in the row and ${betweenRows} between rows (${source}) its ground takes ${fits}.`;
export const crowdedAdvice = "Make it longer, plant fewer, or mend the number.";
export const population = "Too few plants to keep a variety healthy";
export const seedPlants = (name: string, plants: number, needed: number) =>
  `${name}: ${plants} of ${needed} seed plants`;
export const advised = (needed: number, kind: string, source: string) =>
  `${needed} plants of ${kind} are advised (${source}).`;

/** What grows when: ripe before frost, first years, cuts and covers. */
export const lateSeed = "Seed would ripen after the first frost";
export const mayRipenLate = (name: string) => `Seed of ${name} may ripen after the first frost`;
export const startEarlier = "Start it earlier, or be ready to finish it under cover.";
export const ripeOn = (ripe: string, frost: string) =>
  `The first seed is likely ripe on ${ripe}, the first frost is given as ${frost}.`;
export const ripeUntil = (ripe: string, frost: string) =>
  `The first seed may take until ${ripe}, the first frost is given as ${frost}.`;
export const byHeat = (frost: string) =>
  `By the heat counted its seed may not be ripe by the first frost, given as ${frost}.`;
export const biennial = "A biennial will not flower in its first year";
export const biennialTitle = (name: string) => `${name} will not flower in its first year`;
export const biennialAdvice = (kind: string) =>
  `${kind} sown this season makes roots or leaves first and flowers after a winter. Set out overwintered plants for seed, or mark this planting as first-year.`;
export const annual = "An annual is marked as not flowering in its first year";
export const annualTitle = (name: string) => `${name} is an annual and flowers in its first year`;
export const annualAdvice = (kind: string) =>
  `${kind} does not wait for a second year, so it is checked as flowering. If it will not flower, for example because it is eaten or cut before, mark it as cut.`;
export const anyKind = "This kind";
export const cover = "A cover needs care, or does not help";
export const mustBeCut = (name: string) => `${name} must be cut before it flowers`;
export const cutAdvice = (kind: string) =>
  `Seed near by is true only if no ${kind} flowers there. Look every week, and cut again what sprouts; if one has opened, say so here.`;
export const windPasses = (name: string) => `A cage does not isolate ${name}`;
export const windAdvice = (kind: string) =>
  `Pollen of ${kind} travels on the wind and passes the mesh. Bags do stop it.`;
export const notByHand = (name: string) => `${name} is marked as pollinated by hand`;
export const notByHandAdvice = (kind: string) =>
  `Nobody pollinates ${kind} flower by flower, and open flowers take any pollen. Take the mark off, and its distance is asked.`;
export const noPollinators = (name: string) => `${name} needs pollinators under its cover`;
export const pollinatorsAdvice = (kind: string) =>
  `Insects cannot reach it, and ${kind} sets little seed alone. Let pollinators in and keep it shut; or, where all that it crosses with is caged too, open the cages by turns.`;
export const sharedCage = "One cage may stand over two that cross";
export const oneCageOrTwo = (one: string, other: string) => `${one} and ${other}: one cage or two?`;
export const oneCageAdvice = (measured: string) =>
  `Both are caged and lie ${measured} apart. Under one cage insects carry pollen from one to the other, as in the open.`;
export const besideCage = (caged: string, other: string) =>
  `The cage over ${caged} has little room beside ${other}`;
export const besideCageAdvice = (measured: string) =>
  `They lie ${measured} apart. The mesh must stand between them and clear of the flowers of both: insects work through mesh that flowers lean on.`;
export const meshBetween = "If it does, accept this and say so.";
export const ownCages = "If each has a cage of its own, shut on all sides, accept this and say so.";

/** What a variety is entered as. */
export const cutSeed = "A seed planting is marked as cut";
export const cutSeedTitle = (name: string) => `${name} is kept for seed and marked as cut`;
export const cutSeedAdvice =
  "Cut before it flowers it gives no seed, and it is not checked as a seed parent. Mark it as flowering, or as not for seed.";
export const hybrid = "A hybrid is kept for seed";
export const hybridTitle = (name: string) => `${name} is a hybrid kept for seed`;
export const hybridAdvice =
  "Seed of a hybrid does not come true: the next generation splits into many types. It is not checked as a seed parent; its pollen still counts against others.";
export const twoForms = "One name stands for two flower forms";
export const twoFormsTitle = (names: string) => `${names} share a name and differ in flower form`;
export const twoFormsAdvice = (forms: string) =>
  `Under one name they count as one variety and no risk to each other, yet the seed list calls them ${forms}. If they are two varieties, give one another name: then the distance between them is checked.`;
export const unknownChoice = "A figure or flower form is named that the kind does not have";
export const varietyOf = (kind: string) => `A variety of ${kind}`;
export const unknownTitle = (name: string, kind: string) =>
  `${name} names what ${kind} does not have`;
export const unknownFigure = (id: string, kind: string) =>
  `The isolation figure picked, "${id}", is none that is listed for ${kind}.`;
export const unknownForm = (id: string, kind: string) =>
  `The flower form "${id}" is none of ${kind}.`;
export const unknownAdvice =
  "The distance is taken as if nothing had been picked, and may be less than was meant. Pick again in the seed list.";
export const safety = "The usual safety cautions";
export const concerns = (names: string) => `It concerns ${names}.`;

/** Checks of the seed shelf and of the ground's past; what they say stands with what reckons them. */
export const shortOfSeed = "Less seed on the shelf than is sown";
export const oldSeed = "Seed too old to sow";
export const otherVariety = "Sown from a lot of another variety";
export const crossedLot = "Sown from seed that may have crossed";
export const motherLot = "Seed of seed of seed, while older seed is there";
export const volunteers = "Volunteers of an earlier crop may come up";
export const rotation = "Diseases of an earlier crop may wait in the ground";
export const groundMark = "The ground is marked with a disease that harms the crop";
export const clearedEarly = "A seed planting is cleared before its seed is ripe";
export const dateOrder = "Days of a planting cannot follow each other";
