/** What becomes of the open plan when a new one is begun, in words. */
import type { Plan } from "../../core/model/plan.ts";
import { counted } from "../state/selected-objects.ts";

/**
 * `3 layouts, 14 beds, 25 plantings, 9 varieties`: beds and plantings of the layout that has most,
 * as the same ground lies in all of them.
 */
function contents(plan: Plan): string {
  const most = (countOf: (layout: Plan["layouts"][number]) => number) =>
    Math.max(0, ...plan.layouts.map(countOf));
  const parts = [
    plan.layouts.length > 1 ? counted(plan.layouts.length, "layout", "layouts") : "",
    counted(
      most(({ beds }) => beds.length),
      "bed",
      "beds",
    ),
    counted(
      most(({ plantings }) => plantings.length),
      "planting",
      "plantings",
    ),
    counted(plan.varieties.length, "variety", "varieties"),
  ];
  return parts.filter((part) => part !== "").join(", ") || "nothing in it yet";
}

export const newPlanWords = {
  title: "New plan",
  open: (plan: Plan) => `"${plan.title}" is open: ${contents(plan)}. What is to become of it?`,
  keep: "Keep it in this browser",
  keepHint: "It opens again under Plan, Kept plans.",
  keepFails: "It is not saved in this browser at the moment: save it as a file.",
  save: "Save it as a file",
  saveHint: "The file is the archive; the browser keeps it as well.",
  remove: "Delete it ...",
  removeHint: (isInFile: boolean) =>
    isInFile ? "A file of it was saved; that stays." : "No file of it was ever saved.",
  sure: (plan: Plan) => `Delete "${plan.title}" and all its earlier copies from this browser?`,
  sureButton: "Delete it for good",
  cancel: "Cancel",
  removeFailed: (reason: string) => `It could not be deleted: ${reason}. It is still kept.`,
} as const;
