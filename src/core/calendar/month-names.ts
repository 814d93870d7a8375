/** Which month is meant by the words and numbers over or beside the values of a pasted table. */
import { monthName } from "../model/day.ts";
import { type Read, refuse, shown } from "../model/problem.ts";

/** How month names begin in languages that weather offices write, accents left off. */
const BEGINNINGS: readonly (readonly string[])[] = [
  ["jan", "ene", "gen"],
  ["feb", "fev", "fevr"],
  ["mar", "maa", "mrz"],
  ["apr", "abr", "avr"],
  ["may", "mai", "mei", "mag", "maj"],
  ["jun", "juin", "giu"],
  ["jul", "juil", "lug"],
  ["aug", "ago", "aou"],
  ["sep", "set"],
  ["oct", "okt", "ott", "out"],
  ["nov"],
  ["dec", "dez", "dic"],
];
const INITIALS = "jfmamjjasond";
const JANUARY_FIRST = Array.from({ length: 12 }, (_, month) => month);

/**
 * The month, 0 for January, of twelve values by what is written over or beside them. January
 * first where nothing is written; refused where months are named that do not make a year.
 * @param isRow names in one row over the values, where a heading and "Year" may stand beside them
 */
export function monthsNamed(
  names: readonly string[],
  file: string,
  isRow: boolean,
): Read<readonly number[]> {
  const words = names.map(plain);
  const found = words.map(monthOf).filter((month) => month !== null);
  const initials = words.filter((word) => word.length === 1).join("");
  const turn = `${INITIALS}${INITIALS}`.indexOf(initials);
  if (found.length === 0 && initials.length === 12 && turn >= 0) {
    return { ok: true, value: JANUARY_FIRST.map((month) => (month + turn) % 12) };
  }
  const isNothingSaid = isRow ? found.length === 0 : words.every((word) => word === "");
  if (isNothingSaid) return { ok: true, value: JANUARY_FIRST };
  if (found.length === 12 && new Set(found).size === 12) return { ok: true, value: found };
  const odd = words.findIndex((word, at) => {
    const month = monthOf(word);
    return month === null ? !isRow : words.findIndex((each) => monthOf(each) === month) < at;
  });
  const got = odd < 0 ? `${found.length} names of months` : `the month ${shown(names[odd])}`;
  const expected = `each of the twelve months once (as ${monthName(1)} or January), or no names and January first`;
  return refuse({ file, object: "", field: "", got, expected });
}

/** Values in the order of their months, January first. */
export function fromJanuary<T>(values: readonly T[], months: readonly number[]): readonly T[] {
  const sorted = values.map((value, place) => ({ value, month: months[place] ?? place }));
  return sorted.sort((a, b) => a.month - b.month).map(({ value }) => value);
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[^\p{L}\p{Nd}]/gu, "")
    .toLowerCase();
}

function monthOf(word: string): number | null {
  if (/^(0?[1-9]|1[0-2])$/.test(word)) return Number(word) - 1;
  const month = BEGINNINGS.findIndex((all) => all.some((beginning) => word.startsWith(beginning)));
  return month < 0 ? null : month;
}
