/** Finding beds, plantings and surroundings by code, variety, kind, label or note, in any layout. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { lotCodesToSow } from "../../core/lots/lot-book.ts";
import type { Plan } from "../../core/model/plan.ts";
import { foldedText } from "../form/folded-text.ts";
import { surroundingWords } from "../state/plan-words.ts";

/** Matches listed at most. */
const MATCHES_MOST = 200;

export interface Match {
  readonly id: string;
  /** Null for surroundings, which belong to all layouts. */
  readonly layoutId: string | null;
  /** Its code or label. */
  readonly name: string;
  /** Variety and kind, or what it is, and the part of its note that matches. */
  readonly about: string;
  /** Name of the layout, when it is not the one on screen. */
  readonly elsewhere: string | null;
}

interface Candidate extends Match {
  readonly note: string;
}

function candidates(plan: Plan, book: CropBook, shownId: string): readonly Candidate[] {
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const kindName = (id: string | undefined) =>
    id === undefined ? "" : (book.kind(id)?.name ?? id);
  const layouts = [...plan.layouts].sort(
    (a, b) => Number(b.id === shownId) - Number(a.id === shownId),
  );
  const ofLayouts = layouts.flatMap((layout) => {
    const where = { layoutId: layout.id, elsewhere: layout.id === shownId ? null : layout.name };
    const beds = layout.beds.map(({ id, code, note = "" }): Candidate => ({
      ...where,
      id,
      name: code,
      about: "bed",
      note,
    }));
    const plantings = layout.plantings.map(({ id, code, variety, note = "", lots }): Candidate => {
      const { name = "", kind } = varieties.get(variety) ?? {};
      const lot = lotCodesToSow(plan, { lots }, undefined);
      const about = [name, kindName(kind), lot].filter((part) => part !== "").join(", ");
      return { ...where, id, name: code, about, note };
    });
    return [...plantings, ...beds];
  });
  const around = plan.surroundings.map(
    ({ id, label, what, kind, varietyName = "", note = "" }): Candidate => ({
      id,
      layoutId: null,
      elsewhere: null,
      name: label,
      about: [surroundingWords[what], kindName(kind), varietyName]
        .filter((part) => part !== "")
        .join(", "),
      note,
    }),
  );
  return [...ofLayouts, ...around];
}

/** 0: the name itself; 1: its beginning; 2: a word's beginning; 3: inside; 4: in the note; null: nowhere. */
function rank({ name, about, note }: Candidate, query: string): number | null {
  const own = foldedText(name);
  if (own === query) return 0;
  if (own.startsWith(query)) return 1;
  const words = ` ${own} ${foldedText(about)}`;
  if (words.includes(` ${query}`)) return 2;
  if (words.includes(query)) return 3;
  return foldedText(note).includes(query) ? 4 : null;
}

/** What matches, the layout on screen first and the best match first within it. */
export function findObjects(
  plan: Plan,
  book: CropBook,
  shownId: string,
  text: string,
): readonly Match[] {
  const query = foldedText(text);
  if (query === "") return [];
  return candidates(plan, book, shownId)
    .flatMap(({ note, ...match }) => {
      const found = rank({ note, ...match }, query);
      if (found === null) return [];
      const about = found === 4 ? `${match.about}: ${noteAround(note, query)}` : match.about;
      return [{ match: { ...match, about }, found: found + (match.elsewhere === null ? 0 : 10) }];
    })
    .sort((a, b) => a.found - b.found)
    .slice(0, MATCHES_MOST)
    .map(({ match }) => match);
}

/** Some words of a note about the place that matches. */
function noteAround(note: string, query: string): string {
  const at = Math.max(0, foldedText(note).indexOf(query) - 12);
  const part = note.slice(at, at + 48).replaceAll("\n", " ");
  return `${at > 0 ? "..." : ""}${part}${at + 48 < note.length ? "..." : ""}`;
}
