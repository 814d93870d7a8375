/** Words beside marks on the sheet. */
import { type Noun, counted } from "../../core/words/plurals.ts";

const dayNoun: Noun = { one: "day", other: "days" };

export const fromTheBeds = (name: string, distance: string) => `${name}, ${distance} from the beds`;
/** What keeps a pair apart, or does not, on the line between the two. */
export const apartByTime = (days: number) => `time, ${counted(days, dayNoun)}`;
export const gridSpacing = (spacing: number, unit: string) => `grid ${spacing} ${unit}`;
/** The heading of two layouts laid over each other. */
export const overlaid = (first: string, second: string) => `${first}, then ${second}`;
export const needs = (distance: string) => `needs ${distance}`;
export const codeNeeds = (code: string, distance: string) => `${code} needs ${distance}`;
export const apartByCover = "cover";
export const measuredOf = (measured: string, required: string) => `${measured} of ${required}`;
