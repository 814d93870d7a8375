/** Ground by how much would cross there: bands of ink, the darker the more, never good or bad. */
import { shadeBands } from "../../core/crossing-share/shade-bands.ts";
import type { Shade } from "../../core/crossing-share/shade.ts";
import type { Brush } from "./brush.ts";

export function drawCrossingShade(brush: Brush, shade: Shade): void {
  const { context, view } = brush;
  const picture = pictureOf(shade, brush.colours.ink);
  if (!picture) return;
  const { minX, minY, maxX, maxY } = shade.bounds;
  context.save();
  // Bands keep their edges: blurred they would promise more than is known.
  context.imageSmoothingEnabled = false;
  context.drawImage(
    picture,
    view.x + minX * view.scale,
    view.y - maxY * view.scale,
    (maxX - minX) * view.scale,
    (maxY - minY) * view.scale,
  );
  context.restore();
}

interface Made {
  readonly shade: Shade;
  readonly ink: string;
  readonly picture: HTMLCanvasElement;
}
let made: Made | null = null;

/** One dot a cell; kept until another shade or another ink comes. */
function pictureOf(shade: Shade, ink: string): HTMLCanvasElement | null {
  if (made?.shade === shade && made.ink === ink) return made.picture;
  const { columns, rows, shares } = shade;
  const picture = document.createElement("canvas");
  picture.width = columns;
  picture.height = rows;
  const context = picture.getContext("2d");
  if (!context) return null;
  context.fillStyle = ink;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const share = shares[row * columns + column] as number;
      const band = shadeBands.find(({ from }) => share >= from);
      if (!band) continue;
      context.globalAlpha = band.ink;
      context.fillRect(column, rows - 1 - row, 1, 1);
    }
  }
  made = { shade, ink, picture };
  return picture;
}
