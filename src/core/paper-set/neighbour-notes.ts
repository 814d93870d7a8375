/** A page for each neighbour whose crop could cross with what is kept for seed: what to ask him. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { type ListPageSetting, flowPages } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { formatDistance } from "../model/length.ts";
import { type FlowItem, heading, paragraph, space } from "../page/flow.ts";
import type { Page } from "../page/scene.ts";
import { type TableColumn, tableItems } from "../page/table-flow.ts";
import { cutEarly } from "../practice/cut-early.ts";
import { reachOf } from "../remedies/around-proposals.ts";
import { neighbourNoteWords as words } from "./neighbour-note-words.ts";

interface Asked {
  readonly stand: Stand;
  /** Seed parents that its pollen could reach. */
  readonly parents: readonly Stand[];
  readonly nearestM: number;
}

const COLUMNS: readonly TableColumn[] = words.columns.map((title, index) => ({
  title,
  share: [18, 24, 70][index] ?? 20,
  isBlank: true,
}));
/** Room to write by hand. */
const ROW_MM = 14;
const ANSWER_ROWS = 4;

/** Neighbours to ask; wild plants and what is ours to cut are left out. */
export function neighboursToAsk({ plan, result }: CheckedLayout): readonly Asked[] {
  return result.stands.flatMap((stand): readonly Asked[] => {
    const { surrounding, kind } = stand;
    if (!surrounding || reachOf(plan, surrounding) !== "ask") return [];
    if (cutEarly(kind).value === "weed") return [];
    const pairs = result.pairs.filter(({ pollenSource }) => pollenSource === stand.id);
    const parents = pairs.flatMap(({ seedParent }) => result.standById.get(seedParent) ?? []);
    if (parents.length === 0) return [];
    const nearestM = Math.min(...pairs.map(({ distanceM }) => distanceM));
    return [{ stand, parents: [...new Set(parents)], nearestM }];
  });
}

export function neighbourNotePages(
  input: CheckedLayout,
  setting: ListPageSetting,
): readonly Page[] {
  const asked = neighboursToAsk(input);
  if (asked.length === 0) {
    const none = (width: number) => [paragraph(words.none, width, TYPE_PT.body, setting.ruler)];
    return flowPages(words.title, none, setting);
  }
  return asked.flatMap((each) =>
    flowPages(
      words.to(each.stand.surrounding?.label ?? ""),
      (width) => noteItems(input, each, setting, width),
      setting,
    ),
  );
}

function noteItems(
  { plan }: CheckedLayout,
  { stand, parents, nearestM }: Asked,
  { ruler }: ListPageSetting,
  width: number,
): readonly FlowItem[] {
  const { kind, bloom } = stand;
  const say = (text: string) => paragraph(text, width, TYPE_PT.code, ruler);
  const names = parents.map(({ variety, kind: own }) => `${variety?.name ?? ""} (${own.name})`);
  const alike = parents.filter((parent) => parent.kind.id === kind.id && parent.level !== "stock");
  const questions = [
    words.which(kind.name),
    words.flowers,
    ...(cutEarly(kind).value === "eaten before"
      ? [words.cut(bloom === null ? null : bloom.outer.first - 1)]
      : []),
    ...(alike.length > 0
      ? [words.same(alike.map(({ variety }) => variety?.name ?? "").join(", "))]
      : []),
    words.keeps(kind.name),
  ];
  return [
    say(words.grown([...new Set(names)].join(", "), plan.season.name)),
    space(2),
    say(words.carried(kind.carrier, kind.name, formatDistance(nearestM, plan.units))),
    space(3),
    ...questions.flatMap((question, index) => [say(`${index + 1}. ${question}`), space(2)]),
    say(words.thanks),
    space(6),
    heading(words.answers, width, TYPE_PT.code, ruler),
    ...tableItems(
      COLUMNS,
      Array.from({ length: ANSWER_ROWS }, () => words.columns.map(() => "")),
      width,
      { sizePt: TYPE_PT.body, leastRowMm: ROW_MM },
      ruler,
    ),
  ];
}
