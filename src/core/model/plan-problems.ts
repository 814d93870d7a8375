/** Faults a schema cannot see: ids alike, references to nothing, unknown kinds, crossing outlines. */
import { headerOfBase64 } from "./picture-header.ts";
import type { Layout, Picture, Plan, Shape, Variety } from "./plan.ts";
import { lotReferenceProblems, shelfProblems } from "./lot-problems.ts";
import { type Problem, shown } from "./problem.ts";
import { ringProblem } from "./ring.ts";

export function planProblems(
  plan: Plan,
  file: string,
  isKnownKind: (kind: string) => boolean,
): readonly Problem[] {
  const problems: Problem[] = [];
  const add = (object: string, field: string, got: string, expected: string) =>
    problems.push({ file, object, field, got, expected });

  requireDistinct("ownKinds", plan.ownKinds, add);
  const ownKinds = new Set(plan.ownKinds.map((kind) => kind.id));
  const isKnown = (kind: string) => ownKinds.has(kind) || isKnownKind(kind);
  requireDistinct("varieties", plan.varieties, add);
  requireDistinct("layouts", plan.layouts, add);
  const varietyIds = new Set(plan.varieties.map((variety) => variety.id));

  const lotIds = new Set(plan.lots.map((lot) => lot.id));
  plan.varieties.forEach((variety, index) => {
    const object = place("varieties", index, variety.name);
    if (!isKnown(variety.kind)) add(object, "kind", shown(variety.kind), "a known kind");
    varietyLots(variety, object, lotIds, add);
  });
  shelfProblems(plan, add);
  plan.surroundings.forEach((item, index) => {
    const object = place("surroundings", index, item.label);
    if (item.kind !== undefined && !isKnown(item.kind)) {
      add(object, "kind", shown(item.kind), "a known kind");
    }
    if (item.what === "pollen" && item.kind === undefined) {
      add(object, "kind", "nothing", "the kind that flowers there");
    }
    checkOutline(item.outline, object, add);
  });
  requireDistinct("earlierCrops", plan.earlierCrops, add);
  plan.earlierCrops.forEach((crop, index) => {
    const object = place("earlierCrops", index, `${crop.kind} ${crop.year}`);
    if (!isKnown(crop.kind)) add(object, "kind", shown(crop.kind), "a known kind");
    checkOutline(crop.outline, object, add);
  });
  requireDistinct("groundMarks", plan.groundMarks, add);
  plan.groundMarks.forEach((mark, index) => {
    const object = place("groundMarks", index, mark.name ?? mark.disease);
    for (const kind of mark.kinds ?? []) {
      if (!isKnown(kind)) add(object, "kinds", shown(kind), "known kinds");
    }
    checkOutline(mark.outline, object, add);
  });
  requireDistinct("entries", plan.entries, add);
  if (plan.picture) checkPicture(plan.picture, add);
  if (plan.site.outline) checkOutline(plan.site.outline, "site", add);
  if (
    plan.chosenLayout !== undefined &&
    !plan.layouts.some((layout) => layout.id === plan.chosenLayout)
  ) {
    add("", "chosenLayout", shown(plan.chosenLayout), "the id of a layout");
  }
  plan.layouts.forEach((layout, index) =>
    checkLayout(plan, layout, `layouts[${index}]`, { varietyIds, lotIds }, add),
  );
  return problems;
}

/** Lots that a variety names, for itself and for what of it waits to be set out. */
function varietyLots(
  variety: Variety,
  object: string,
  lotIds: ReadonlySet<string>,
  add: Add,
): void {
  lotReferenceProblems(variety, object, lotIds, add);
  variety.toSetOut?.forEach((roots, at) =>
    lotReferenceProblems(roots, `${object}.toSetOut[${at}]`, lotIds, add),
  );
}

type Add = (object: string, field: string, got: string, expected: string) => void;

function place(list: string, index: number, label: string): string {
  return `${list}[${index}] ${shown(label)}`;
}

function checkLayout(
  plan: Plan,
  layout: Layout,
  prefix: string,
  {
    varietyIds,
    lotIds,
  }: { readonly varietyIds: ReadonlySet<string>; readonly lotIds: ReadonlySet<string> },
  add: Add,
): void {
  // Findings name their subjects by id, so all drawn objects of a layout share one id space.
  // The site takes part under the name "site".
  const seen = new Map([["site", "the site"]]);
  const claim = (id: string, object: string) => {
    const earlier = seen.get(id);
    if (earlier === undefined) seen.set(id, object);
    else add(object, "id", shown(id), `an id of its own (${earlier} has it already)`);
  };
  plan.surroundings.forEach((item, index) =>
    claim(item.id, place("surroundings", index, item.label)),
  );
  layout.beds.forEach((bed, index) => {
    const object = place(`${prefix}.beds`, index, bed.code);
    claim(bed.id, object);
    checkOutline(bed.outline, object, add);
  });
  const bedIds = new Set(layout.beds.map((bed) => bed.id));
  layout.plantings.forEach((planting, index) => {
    const object = place(`${prefix}.plantings`, index, planting.code);
    claim(planting.id, object);
    checkOutline(planting.outline, object, add);
    if (!varietyIds.has(planting.variety)) {
      add(object, "variety", shown(planting.variety), "the id of a variety in this plan");
    }
    if (planting.bed !== undefined && !bedIds.has(planting.bed)) {
      add(object, "bed", shown(planting.bed), "the id of a bed in this layout");
    }
    lotReferenceProblems(planting, object, lotIds, add);
  });
}

function requireDistinct(
  list: string,
  items: readonly { readonly id: string; readonly name?: string | undefined }[],
  add: Add,
): void {
  const seen = new Map<string, number>();
  items.forEach((item, index) => {
    const earlier = seen.get(item.id);
    if (earlier === undefined) seen.set(item.id, index);
    else {
      add(
        place(list, index, item.name ?? item.id),
        "id",
        shown(item.id),
        `an id of its own (${list}[${earlier}] has it already)`,
      );
    }
  });
}

/** Most dots of a picture: 200 MB once it is unpacked; a photo taken in has at most 4 million. */
const MOST_DOTS = 50_000_000;

/**
 * A picture is unpacked to its dots for the screen and for paper, four bytes each: what the plan
 * states of their number is not believed, the picture's own header is. Stated and real width may
 * be swapped by a camera's note of its turn.
 */
function checkPicture({ name, data, widthPx, heightPx }: Picture, add: Add): void {
  const real = headerOfBase64(data);
  if (!real) return;
  const dots = real.widthPx * real.heightPx;
  const refuse = (expected: string) =>
    add(
      `picture ${shown(name)}`,
      "data",
      `a picture of ${real.widthPx} x ${real.heightPx} dots`,
      expected,
    );
  if (dots > widthPx * heightPx) {
    refuse(`at most the ${widthPx} x ${heightPx} dots that are stated`);
  } else if (dots > MOST_DOTS) refuse(`at most ${MOST_DOTS / 1e6} million dots`);
}

function checkOutline(outline: Shape, object: string, add: Add): void {
  if (outline.shape !== "polygon") return;
  const trouble = ringProblem(outline.corners);
  if (trouble !== null) add(object, "outline", trouble, "a simple outline");
  outline.holes?.forEach((hole, index) => {
    const holeTrouble = ringProblem(hole);
    if (holeTrouble !== null)
      add(object, `outline.holes[${index}]`, holeTrouble, "a simple outline");
  });
}
