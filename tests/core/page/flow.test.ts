/** What belongs together stays in one column. */
import { expect, test } from "vitest";
import { type FlowItem, flowInto, heading, paragraph } from "../../../src/core/page/flow.ts";
import type { TextRuler } from "../../../src/core/page/scene.ts";

const ruler: TextRuler = {
  width: (words, sizePt) => words.length * sizePt * 0.2,
  canShow: () => true,
};
const block = (height: number): FlowItem => ({ height, draw: () => [] });

test("a heading, the lines kept with it and what they lead to move to the next column together", () => {
  const line = { ...paragraph("Needs 3 m.", 100, 9, ruler), isKeptWithNext: true };
  const items = [block(10), heading("Old Ferry", 100, 11, ruler), line, block(20)];
  const enough = items.reduce((sum, { height }) => sum + height, 0) + 4;
  const column = (height: number) => [{ left: 0, top: 0, width: 100, height }];
  expect(flowInto(items, column(enough)).rest).toEqual([]);
  expect(flowInto(items, column(enough - 10)).rest).toEqual(items.slice(1));
});

test("what is higher than a column is set all the same", () => {
  const items = [{ ...block(30), isKeptWithNext: true }, block(30)];
  expect(flowInto(items, [{ left: 0, top: 0, width: 100, height: 20 }]).rest).toEqual([items[1]]);
});
