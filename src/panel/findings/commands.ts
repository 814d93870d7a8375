import { useClearGroundState } from "../../store/window/clear-ground.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import type { Command } from "../commands/command.ts";

/** Shows where the selected planting could lie, without dragging it; asked for again, hides it. */
export const clearGround = {
  id: "clear-ground",
  name: "Clear ground of the selected planting",
  group: "View",
  also: "where free place",
  whyNot: ({ selection, result }) => {
    if (useClearGroundState.getState().isAsked) return null;
    const isPlanting = Boolean(result.standById.get(selection[0] ?? "")?.planting);
    return selection.length === 1 && isPlanting ? null : "Select one planting";
  },
  run: () => {
    const { isAsked, ask } = useClearGroundState.getState();
    ask(!isAsked);
  },
} as const satisfies Command;

/** Shades the sheet by how much of the selected planting's seed would be crossed there. */
export const crossingShade = {
  id: "crossing-shade",
  name: "Shade by how much would cross",
  group: "View",
  also: "estimate outcrossing pollen",
  whyNot: ({ selection, result }) => {
    if (useCrossingShadeState.getState().isAsked) return null;
    const isParent = result.standById.get(selection[0] ?? "")?.isSeedParent === true;
    return selection.length === 1 && isParent ? null : "Select one planting kept for seed";
  },
  run: () => {
    const { isAsked, ask } = useCrossingShadeState.getState();
    ask(!isAsked);
  },
} as const satisfies Command;
