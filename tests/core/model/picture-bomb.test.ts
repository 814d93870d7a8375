/** A picture that would swell beyond all measure is refused by its own header, when a plan is opened. */
import { crc32, deflateSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import type { Picture } from "../../../src/core/model/plan.ts";
import { gardenPlan } from "../../support/paper-garden.ts";

/** Black and white, one bit a dot (W3C Portable Network Graphics, Third Edition, 11.2.1). */
function realPng(widthPx: number, heightPx: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(widthPx, 0);
  head.writeUInt32BE(heightPx, 4);
  head[8] = 1;
  const rows = Buffer.alloc((1 + Math.ceil(widthPx / 8)) * heightPx);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows, { level: 1 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function opened(data: Buffer, stated: Pick<Picture, "widthPx" | "heightPx">) {
  const picture: Picture = {
    name: "sketch.png",
    data: data.toString("base64"),
    mediaType: "image/png",
    ...stated,
    x: 0,
    y: 0,
    metresPerPixel: 0.1,
    turnDeg: 0,
    opacity: 1,
    isPrinted: true,
  };
  const text = JSON.stringify({ ...JSON.parse(writePlan(gardenPlan())), picture });
  const read = readPlan(text, "bomb.json", () => true);
  return read.ok ? [] : read.problems;
}

describe("a real PNG of 22,000 x 22,000 dots, some hundred kilobytes", () => {
  const bomb = realPng(22_000, 22_000);

  test("is refused whatever the plan states, with its name, its dots and what is allowed", () => {
    expect(bomb.length).toBeLessThan(3_000_000);
    const problems = opened(bomb, { widthPx: 800, heightPx: 600 });
    expect(problems).toEqual([
      expect.objectContaining({
        file: "bomb.json",
        object: 'picture "sketch.png"',
        field: "data",
        got: "a picture of 22000 x 22000 dots",
        expected: "at most the 800 x 600 dots that are stated",
      }),
    ]);
    const most = opened(bomb, { widthPx: 10_000, heightPx: 10_000 });
    expect(most[0]?.got).toBe("a picture of 22000 x 22000 dots");
  });

  test("costs no memory to refuse: nothing of it is unpacked", () => {
    const before = process.memoryUsage().arrayBuffers;
    opened(bomb, { widthPx: 10_000, heightPx: 10_000 });
    // Unpacked it would be 60 MB at one bit a dot, 1.9 GB as the screen holds it.
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(10_000_000);
  });
});

test("one that says truly how large it is is refused where that is too much", () => {
  const problems = opened(realPng(9000, 9000), { widthPx: 9000, heightPx: 9000 });
  expect(problems[0]).toMatchObject({
    got: "a picture of 9000 x 9000 dots",
    expected: "at most 50 million dots",
  });
  expect(opened(realPng(2000, 1500), { widthPx: 2000, heightPx: 1500 })).toEqual([]);
});
