/** Diseases that stay in the ground once they are there: marked with a day, never counted in years. */
import type { Kind } from "../kinds/crop.ts";
import type { GroundMark } from "../model/plan.ts";
import { type Taxa, isAmong } from "./taxa.ts";

export interface GroundDisease {
  readonly id: string;
  readonly name: string;
  /** Whom it harms. */
  readonly hosts: Taxa;
  /** Hosts in words. */
  readonly hostWords: string;
  /** How long it stays, in words, with who says so; null: no figure was found. */
  readonly stays: string | null;
  readonly source: string | null;
}

export const groundDiseases: readonly GroundDisease[] = [
  {
    id: "white-rot",
    name: "white rot",
    hosts: ["Allium"],
    hostWords: "onions, garlic, leeks and all their kin",
    stays:
      "It lives in the ground for over 20 years, and one grain of it in 10 kg of soil is enough",
    source: "uc-white-rot",
  },
  {
    id: "clubroot",
    name: "clubroot",
    hosts: ["Brassica", "Raphanus"],
    hostWords: "cabbages and their kin, turnips and radishes",
    stays: "7 years without them are asked where it was",
    source: "uconn-rotation",
  },
  {
    id: "verticillium-wilt",
    name: "Verticillium wilt",
    hosts: ["Solanum melongena", "Solanum lycopersicum", "Solanum pimpinellifolium", "Capsicum"],
    hostWords: "eggplants, tomatoes and peppers, and potatoes, strawberries and brambles",
    stays: "4 years without them are asked where it was",
    source: "uconn-rotation",
  },
  {
    id: "fusarium-wilt-of-spinach",
    name: "Fusarium wilt of spinach",
    hosts: ["Spinacia oleracea"],
    hostWords: "spinach",
    stays: "It lives in the ground for 10 to 15 years",
    source: "wsu-spinach-wilt",
  },
];

const byId = new Map(groundDiseases.map((disease) => [disease.id, disease]));

export function groundDisease(id: string): GroundDisease | undefined {
  return byId.get(id);
}

/** What a mark is called: `white rot`, or its own name. */
export function markName({ disease, name }: Pick<GroundMark, "disease" | "name">): string {
  const known = byId.get(disease)?.name;
  return known ?? (name === undefined || name === "" ? disease.replaceAll("-", " ") : name);
}

/** Whether what a mark stands for harms a kind: by the disease, or by the kinds the mark names. */
export function harms(mark: GroundMark, kind: Kind): boolean {
  const known = byId.get(mark.disease);
  return (
    (known !== undefined && isAmong(kind, known.hosts, kind)) ||
    mark.kinds?.includes(kind.id) === true
  );
}
