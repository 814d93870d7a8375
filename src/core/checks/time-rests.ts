/** On what time between two blooms rests, in words, and until when it holds. */
import { basisWord } from "../calendar/basis.ts";
import { shortDate } from "../model/day.ts";
import type { TimeClear } from "./isolation-pair.ts";

type NameOf = (id: string) => string;

/** On what the days between rest: `the end of B01 and the start of B02 rest on a rule of thumb`. */
export function restsWords(time: TimeClear, nameOf: NameOf): string {
  const [end, start] = [`the end of ${nameOf(time.earlier)}`, `the start of ${nameOf(time.later)}`];
  const unlike = time.isCountedUnlike ? "; one is counted in heat, the other in days" : "";
  if (time.closes === time.opens)
    return `${end} and ${start} rest on ${basisWord[time.closes]}${unlike}`;
  return `${end} rests on ${basisWord[time.closes]}, ${start} on ${basisWord[time.opens]}${unlike}`;
}

/** `B01 must be over by 12 Jun and B02 not open before 20 Jun`. */
export function safeDaysWords(time: TimeClear, nameOf: NameOf): string {
  return `${nameOf(time.earlier)} must be over by ${shortDate(time.lastDay)} and ${nameOf(time.later)} not open before ${shortDate(time.firstDay)}`;
}
