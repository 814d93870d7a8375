/** The picture that stands in for the ground while the view moves lies where the ground would. */
import { expect, test } from "vitest";
import { placeOfPicture } from "../../../src/canvas/draw/ground-picture.ts";
import { pannedBy, toPx, zoomedAbout } from "../../../src/canvas/scene/viewport.ts";

const before = { scale: 12.5, x: 310.25, y: 477.75 };
const room = { x: 200, y: 120 };
const places = [
  { x: 0, y: 0 },
  { x: 17.25, y: -4.5 },
  { x: -80, y: 33 },
];

const views = {
  "panned by a hand": pannedBy(before, -63.5, 41.25),
  "zoomed in about the pointer": zoomedAbout(before, { x: 400, y: 90 }, 1.37),
  "zoomed out, then panned": pannedBy(zoomedAbout(before, { x: 12, y: 700 }, 0.6), 9, -200),
};

for (const [name, now] of Object.entries(views)) {
  test(`every place lies on its pixel: ${name}`, () => {
    const picture = placeOfPicture(before, room, now);
    for (const place of places) {
      const drawn = toPx(before, place);
      const wanted = toPx(now, place);
      expect(picture.x + (drawn.x + room.x) * picture.stretch).toBeCloseTo(wanted.x, 9);
      expect(picture.y + (drawn.y + room.y) * picture.stretch).toBeCloseTo(wanted.y, 9);
    }
  });
}
