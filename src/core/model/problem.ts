/** Something wrong with input, said so that a person can find and mend the place. */
export interface Problem {
  /** File name or other name of the input. */
  readonly file: string;
  /** Which object, e.g. `layouts[0].plantings[3] "B07-2"`; empty for the file as a whole. */
  readonly object: string;
  /** Field within the object, e.g. `outline.lengthM`; empty for the object as a whole. */
  readonly field: string;
  readonly got: string;
  readonly expected: string;
}

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** One line: `plan.json: layouts[0].beds[2] "B03", outline.lengthM: got "abc", expected number.` */
export function problemText(problem: Problem): string {
  const place = [problem.object, problem.field].filter((part) => part !== "").join(", ");
  const where = place === "" ? problem.file : `${problem.file}: ${place}`;
  return `${where}: got ${problem.got}, expected ${problem.expected}.`;
}

export function refuse(problem: Problem): {
  readonly ok: false;
  readonly problems: readonly Problem[];
} {
  return { ok: false, problems: [problem] };
}

/** A short, safe rendering of any input value for a message. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object";
  const text = JSON.stringify(value) ?? `a ${typeof value}`;
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
