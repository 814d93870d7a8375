/** Titles of the steps that the fields of what is selected make. */
import { type Noun, counted } from "../../core/words/plurals.ts";

const bedNoun: Noun = { one: "bed", other: "beds" };
const plantingNoun: Noun = { one: "planting", other: "plantings" };
const groundNoun: Noun = { one: "neighbour or feature", other: "neighbours and features" };

export const plantingCount = (count: number) => counted(count, plantingNoun);
export const groundCount = (count: number) => counted(count, groundNoun);

export const moveToBed = (code: string, bed: string) => `Move ${code} to bed ${bed}`;
export const renameBed = (old: string, next: string) => `Rename bed ${old} to ${next}`;
export const rename = (old: string, next: string) => `Rename ${old} to ${next}`;
export const noteOnBed = (code: string) => `Note on bed ${code}`;
export const noteOn = (name: string) => `Note on ${name}`;
export const lock = (names: string) => `Lock ${names}`;
export const unlock = (names: string) => `Unlock ${names}`;
export const move = (name: string) => `Move ${name}`;
export const resize = (name: string) => `Resize ${name}`;
export const turn = (name: string) => `Turn ${name}`;
export const reshape = (name: string) => `Reshape ${name}`;
export const makeOutline = (name: string) => `Make ${name} an outline`;
export const resizeBeds = (count: number) => `Resize ${counted(count, bedNoun)}`;
export const turnBeds = (count: number) => `Turn ${counted(count, bedNoun)}`;
export const slide = (code: string) => `Slide ${code} along its bed`;

export const stays = (code: string) => `${code} stays`;
export const clearAway = (code: string) => `Clear ${code}`;
export const sowUnderGlass = (code: string) => `Sow ${code} under glass`;
export const setOut = (code: string) => `Set out ${code}`;

export const setDistance = (code: string) => `Set isolation distance of ${code}`;
export const changeWhatHolds = (code: string) => `Change what holds for ${code}`;
export const keepApart = (code: string) => `Keep ${code} apart`;
export const changeCover = (name: string) => `Change cover of ${name}`;
export const changeLevel = (code: string) => `Change level of ${code}`;
export const changeVariety = (code: string) => `Change variety of ${code}`;
export const changePurpose = (code: string) => `Change purpose of ${code}`;
export const changeFlowering = (name: string) => `Change flowering of ${name}`;
export const changeWhatItIs = (name: string) => `Change what ${name} is`;
export const changeWhatTheyAre = (names: string) => `Change what ${names} are`;

export const setPlants = (name: string) => `Set plants of ${name}`;
export const setRows = (name: string) => `Set rows of ${name}`;
export const setPlantsInRow = (name: string) => `Set plants in a row of ${name}`;
export const fitToPlants = (code: string, plants: number) => `Fit ${code} to ${plants} plants`;
export const setLot = (code: string) => `Set lot of ${code}`;
export const setSize = (name: string) => `Set size of ${name}`;
export const setVariety = (name: string) => `Set variety of ${name}`;
export const setKind = (name: string) => `Set kind of ${name}`;
export const setBloom = (name: string) => `Set bloom of ${name}`;
export const sameEveryYear = (name: string) => `${name} is the same every year`;
export const askEveryYear = (name: string) => `Ask about ${name} every year`;
