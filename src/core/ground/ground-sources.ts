/** Who says what of ground: years between crops, diseases that stay, how far seed is shed. */
import type { Source } from "../kinds/crop.ts";
import { citedAs } from "../kinds/sources.ts";

function seen(id: string, title: string, publisher: string, edition: string): Source {
  return { id, title, publisher, edition, trust: "seen" };
}

export const groundSources: readonly Source[] = [
  {
    ...seen(
      "uk-annex-1",
      "Technical Standard Supplements for seed certification, Annex 1, guidance on previous cropping",
      "England and Wales",
      "December 2016",
    ),
    authority: "regulator",
  },
  seen(
    "uconn-rotation",
    "Having problems controlling vegetable crop diseases? Try rotation",
    "University of Connecticut, Integrated Pest Management",
    "n.d.",
  ),
  seen(
    "wsu-spinach-wilt",
    "Fusarium wilt of spinach seed crops",
    "Washington State University, Mount Vernon",
    "2014 and 2016",
  ),
  seen(
    "uc-white-rot",
    "Onion and garlic pest management guidelines: white rot",
    "University of California, Integrated Pest Management",
    "n.d.",
  ),
  seen(
    "rape-seed-shed",
    "Dispersal of shed rape seed (Colbach 2000), as coded in the package RCALI 0.3.7",
    "Comprehensive R Archive Network",
    "0.3.7",
  ),
];

const byId = new Map(groundSources.map((source) => [source.id, source]));

/** A source of this folder or of the crop base as it stands in a sentence. */
export function groundCited(id: string): string {
  const source = byId.get(id);
  return source ? `${source.title}, ${source.publisher}` : citedAs(id);
}
