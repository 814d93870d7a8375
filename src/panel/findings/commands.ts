import { useClearGroundState } from "../../store/window/clear-ground.ts";
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
