/** Works out clear ground on a thread of its own, one request after the other. */
import { unpackOutlines } from "../../core/geometry/packed-outlines.ts";
import { solvedGround } from "../../core/remedies/solved-ground.ts";
import type { GroundAnswer, GroundRequest } from "./clear-ground-request.ts";

addEventListener("message", ({ data }: MessageEvent<GroundRequest>) => {
  const { turn, centre, untold, outlines, bedCount, kept } = data;
  const [outline, ...others] = unpackOutlines(outlines);
  if (!outline) return;
  const keptFrom = others.length - kept.length;
  const { centres, ground, forbidding } = solvedGround({
    outline,
    centre,
    untold,
    beds: others.slice(0, bedCount),
    taken: others.slice(bedCount, keptFrom),
    keeps: kept.map((keep, index) => ({ ...keep, outline: others[keptFrom + index] ?? outline })),
  });
  const [most] = centres.length === 0 ? forbidding() : [];
  const answer: GroundAnswer = { turn, centres, ground, most: most ?? null };
  postMessage(answer);
});
