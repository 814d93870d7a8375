/** The pages of the sheets that go with the map. */
import type { Page } from "../page/scene.ts";
import { bedCardPages } from "./bed-cards.ts";
import { calendarPages } from "./calendar-pages.ts";
import { type CompanionId, companionIds } from "../map/companion-ids.ts";
import { harvestPages } from "./harvest-pages.ts";
import { isolationPages } from "./isolation-report.ts";
import type { ListPageSetting } from "../map/list-pages.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { setOutPages } from "./set-out-pages.ts";

const makers: Readonly<
  Record<CompanionId, (input: CheckedLayout, setting: ListPageSetting) => readonly Page[]>
> = {
  "bed-cards": bedCardPages,
  calendar: calendarPages,
  harvest: harvestPages,
  isolation: isolationPages,
  "set-out": setOutPages,
};

/** Pages of those wanted, in the order of the list. */
export function companionPages(
  wanted: readonly CompanionId[],
  input: CheckedLayout,
  setting: ListPageSetting,
): readonly Page[] {
  return companionIds
    .filter((id) => wanted.includes(id))
    .flatMap((id) => makers[id](input, setting));
}
