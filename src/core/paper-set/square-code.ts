/** The code on a card that a telephone reads, and opens the plot by. */
import { qrMarks } from "../page/qr-marks.ts";
import { figure } from "../page/scene.ts";
import { bedCardWords } from "./page-words.ts";

/** The square code: as small as a telephone reads it well, larger where its words are longer. */
const CODE_MM = [14, 16, 18, 20, 22] as const;

/** Side in mm and the marks at a place; null where the words are too long for any. */
export function squareCode(machine: string) {
  const side = CODE_MM.find(
    (each) => qrMarks(machine, { left: 0, top: 0, width: each, height: each }) !== null,
  );
  if (side === undefined) return null;
  return {
    side,
    marks: (left: number, top: number) => {
      const box = { left, top, width: side, height: side };
      return figure(bedCardWords.machineCode(machine), box, qrMarks(machine, box) ?? []);
    },
  };
}
