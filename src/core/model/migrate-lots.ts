/**
 * From version 2 to 3: a lot was a text on a planting or a variety; now lots are things of the
 * plan, and plantings and varieties name them by id. Works on a document that nobody has checked
 * yet, so it changes only what has the form it knows; the schema speaks of the rest.
 */
import { foldedCode, freeCode } from "./lot-code.ts";

type Fields = Readonly<Record<string, unknown>>;

interface MadeLot {
  readonly id: string;
  readonly code: string;
  readonly variety: string;
}

/** The document with a lot for each different text of a variety, under that text as its code. */
export function lotsFromTexts(raw: Fields): Fields {
  const made = new Map<string, MadeLot>();
  const codes = new Map<string, MadeLot>();
  const lotOf = (text: string, variety: string): string => {
    const key = `${variety}|${foldedCode(text)}`;
    const known = made.get(key);
    if (known) return known.id;
    const lot = { id: `lot-${made.size + 1}`, code: freeCode(text.trim(), codes), variety };
    made.set(key, lot);
    codes.set(foldedCode(lot.code), lot);
    return lot.id;
  };
  const varieties = mapped(raw["varieties"], (variety) => withLots(variety, variety["id"], lotOf));
  const layouts = mapped(raw["layouts"], (layout) =>
    "plantings" in layout
      ? {
          ...layout,
          plantings: mapped(layout["plantings"], (planting) =>
            withLots(planting, planting["variety"], lotOf),
          ),
        }
      : layout,
  );
  return {
    ...raw,
    ...("varieties" in raw ? { varieties } : {}),
    ...("layouts" in raw ? { layouts } : {}),
    ...(made.size > 0 ? { lots: [...made.values()] } : {}),
    version: 3,
  };
}

/** The thing with its text turned into a reference. A lot that is no text is left to the schema. */
function withLots(
  thing: Fields,
  variety: unknown,
  lotOf: (text: string, variety: string) => string,
): Fields {
  if (!("lot" in thing)) return thing;
  const { lot, ...rest } = thing;
  if (typeof lot !== "string" || typeof variety !== "string") return { ...rest, lots: lot };
  return lot.trim() === "" ? rest : { ...rest, lots: [lotOf(lot, variety)] };
}

function mapped(list: unknown, change: (item: Fields) => Fields): unknown {
  if (!Array.isArray(list)) return list;
  return list.map((item: unknown) =>
    typeof item === "object" && item !== null && !Array.isArray(item)
      ? change(item as Fields)
      : item,
  );
}
