/** Words for what may come up of an earlier crop. */
import { citedAs } from "../kinds/sources.ts";
import type { Kind } from "../kinds/crop.ts";
import type { VolunteersFinding } from "./finding.ts";
import type { Stand } from "./stand.ts";

interface VolunteerWords {
  readonly title: string;
  readonly sentences: readonly string[];
}

/** @param stand the seed parent, for its kind and the names of other kinds */
export function describeVolunteers(
  finding: VolunteersFinding,
  name: string,
  stand: Stand | undefined,
): VolunteerWords {
  const grew = `On its ground grew ${listedAll(finding.crops.map((crop) => cropWords(crop, stand)))}.`;
  const kind = stand?.kind.name ?? "its kind";
  const dig = `Dig out what comes up unsown, or lay ${name} elsewhere.`;
  if (finding.landYears === null || finding.source === null) {
    return {
      title: `It cannot be told whether volunteers come up among ${name}`,
      sentences: [
        grew,
        `No figure is known here for how many years ground should be free of it before seed of ${kind}.`,
        dig,
      ],
    };
  }
  return {
    title: `Volunteers may come up among ${name}`,
    sentences: [
      grew,
      `Ground should be free of what crosses with ${kind} for ${years(finding.landYears)} before seed of it (${sourceWords(stand?.kind, finding.source)}).`,
      ...relationWords(finding, stand),
      dig,
    ],
  };
}

function sourceWords(kind: Kind | undefined, source: string): string {
  const note = kind?.landYears?.note;
  return note === undefined ? citedAs(source) : `${citedAs(source)}; ${note}`;
}

function cropWords(
  { kind, varietyName, year }: VolunteersFinding["crops"][number],
  stand: Stand | undefined,
): string {
  const name = stand?.book.kind(kind)?.name ?? kind;
  return `${name}${varietyName === null ? "" : ` ${varietyName}`} in ${year}`;
}

/** Says so where all that grew there crosses rarely with it. */
function relationWords({ crops }: VolunteersFinding, stand: Stand | undefined): readonly string[] {
  if (!stand) return [];
  const relations = crops.map(({ kind }) => {
    const earlier = stand.book.kind(kind);
    return earlier ? stand.book.relation(stand.kind, earlier).relation : "freely";
  });
  return relations.every((relation) => relation === "rarely")
    ? ["The two species cross rarely."]
    : [];
}

function years(count: number): string {
  return count === 1 ? "1 year" : `${count} years`;
}

function listedAll(names: readonly string[]): string {
  if (names.length <= 1) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
