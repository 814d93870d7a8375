/** A camera's picture made for tests: a square code held before it, as a Y4M film of a few frames. */
import startCode from "qrcode-generator";

const WIDTH = 640;
const HEIGHT = 480;
const MODULE_PX = 8;
const FRAMES = 10;
const PAPER = 235;
const INK = 16;
const NO_COLOUR = 128;

/** Y4M (https://wiki.multimedia.cx/index.php/YUV4MPEG2), 4:2:0: Chromium takes it for a camera. */
export function cameraFilm(text: string): Buffer {
  const code = startCode(0, "M");
  code.addData(text);
  code.make();
  const size = code.getModuleCount();
  const left = Math.floor((WIDTH - size * MODULE_PX) / 2);
  const top = Math.floor((HEIGHT - size * MODULE_PX) / 2);
  const light = Buffer.alloc(WIDTH * HEIGHT, PAPER);
  for (let row = 0; row < size * MODULE_PX; row += 1) {
    for (let column = 0; column < size * MODULE_PX; column += 1) {
      const isInk = code.isDark(Math.floor(row / MODULE_PX), Math.floor(column / MODULE_PX));
      if (isInk) light[(top + row) * WIDTH + left + column] = INK;
    }
  }
  const colour = Buffer.alloc((WIDTH / 2) * (HEIGHT / 2) * 2, NO_COLOUR);
  const frame = Buffer.concat([Buffer.from("FRAME\n"), light, colour]);
  const head = Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F10:1 Ip A1:1 C420jpeg\n`);
  return Buffer.concat([head, ...Array.from({ length: FRAMES }, () => frame)]);
}
