/** A plan's own kinds, made into kinds like the built-in ones. */
import type { OwnKind, Plan } from "../model/plan.ts";
import type { IsolationFigure, Kind, Level, Sourced, Timing } from "./crop.ts";
import { type CropBook, cropBook } from "./crop-book.ts";
import { levelOrder } from "./levels.ts";

/** Source id of every figure the grower typed. */
export const OWN_SOURCE = "own";

const books = new WeakMap<Plan["ownKinds"], CropBook>();

/** The crop base of a plan: the built-in kinds with the plan's own. The same object for the same list. */
export function planBook(plan: Plan): CropBook {
  if (plan.ownKinds.length === 0) return cropBook();
  const known = books.get(plan.ownKinds);
  if (known) return known;
  const made = cropBook(plan.ownKinds.map(kindOf));
  books.set(plan.ownKinds, made);
  return made;
}

/**
 * An own kind as a kind of the crop base. What is typed goes before what a built-in kind of the
 * same id gives; its flower forms, published figures and cautions stay.
 */
export function kindOf(own: OwnKind): Kind {
  const builtIn = cropBook().kind(own.id);
  const botanicalName = own.botanicalName ?? builtIn?.botanicalName ?? own.name;
  const isBotanyTyped =
    own.lifeCycle !== builtIn?.lifeCycle ||
    own.carrier !== builtIn.carrier ||
    own.breeding !== builtIn.breeding;
  return {
    ...builtIn,
    id: own.id,
    name: own.name,
    otherNames: builtIn?.otherNames ?? [],
    botanicalName,
    family: own.family ?? builtIn?.family ?? "",
    species: own.species ?? builtIn?.species ?? botanicalName,
    group: own.group,
    lifeCycle: own.lifeCycle,
    carrier: own.carrier,
    breeding: own.breeding,
    botanySource: isBotanyTyped ? OWN_SOURCE : builtIn.botanySource,
    isolation: [
      ...levelOrder.flatMap((level) => ownFigure(own, level)),
      ...(builtIn?.isolation ?? []),
    ],
    timing: { ...builtIn?.timing, ...ownTiming(own) },
    ...(own.inRowM !== undefined && own.betweenRowsM !== undefined
      ? { spacing: { inRowM: typed(own.inRowM), betweenRowsM: typed(own.betweenRowsM) } }
      : {}),
    ...(own.plantsNeeded === undefined
      ? {}
      : { population: { maintenance: typed(own.plantsNeeded) } }),
  };
}

function typed<T>(value: T): Sourced<T> {
  return { value, source: OWN_SOURCE };
}

function ownFigure(own: OwnKind, level: Level): readonly IsolationFigure[] {
  const metres = own.isolationM[level];
  if (metres === undefined) return [];
  return [
    {
      id: `own-${level}`,
      figureClass: `own ${level}`,
      metres,
      published: `${metres} m`,
      source: OWN_SOURCE,
      ...(own.source === undefined ? {} : { note: own.source }),
    },
  ];
}

function ownTiming(own: OwnKind): Timing {
  const { sownToFlower, transplantedToFlower, bloomDays, flowerToSeed } = own;
  return {
    ...(sownToFlower ? { sownToFlower: typed(sownToFlower) } : {}),
    ...(transplantedToFlower ? { transplantedToFlower: typed(transplantedToFlower) } : {}),
    ...(bloomDays ? { bloomDays: typed(bloomDays) } : {}),
    ...(flowerToSeed ? { flowerToSeed: typed(flowerToSeed) } : {}),
  };
}
