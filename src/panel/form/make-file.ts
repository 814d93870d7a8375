/** Makes one of the files for others and hands it to the browser. */
import type { ExportFormat } from "../../core/files/export-list.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import { usualLabelSize } from "../../core/labels/label-sizes.ts";
import { storedOffset } from "../../store/window/label-memory.ts";
import { planNow } from "../state/plan-actions.ts";
import { askPaper } from "../state/ask-paper.ts";
import { downloadMade } from "./download.ts";
import { rasterOfSvg } from "./raster-of-svg.ts";

/** What a dialog has asked about a file; what is left out is as usual. */
export interface FileChoice {
  readonly dotsPerInch?: number;
  readonly labels?: LabelChoice;
  /** Jobs that stay out of the calendar. */
  readonly leftOut?: ReadonlySet<string>;
  /** Ids of the lots wanted; left out: all. */
  readonly lots?: ReadonlySet<string>;
  /** Begins with the mark that tells spreadsheets the text is UTF-8. */
  readonly hasMark?: boolean;
  readonly signal?: AbortSignal;
}

export interface MadeFile {
  readonly name: string;
  /** What to look at before it is used. */
  readonly remarks: readonly string[];
}

const USUAL_DOTS = 150;

/** Makes and downloads the file of the kept layout on screen; null when it was stopped. */
export async function makeFile(
  format: ExportFormat,
  choice: FileChoice = {},
): Promise<MadeFile | null> {
  const { units } = planNow().kept.plan;
  const made = await askPaper(
    {
      what: "file",
      format: format.id,
      labels: choice.labels ?? usualLabels(units, format.labels !== "stakes"),
      leftOut: [...(choice.leftOut ?? [])],
      lots: choice.lots ? [...choice.lots] : null,
      hasMark: choice.hasMark === true,
    },
    {
      followsReading: format.followsReading === true,
      ...(choice.signal ? { signal: choice.signal } : {}),
    },
  );
  if (!made) return null;
  const [name = ""] =
    format.needs === "canvas"
      ? downloadMade({ ...made, files: await rastered(made.files, choice.dotsPerInch) })
      : downloadMade(made);
  return { name, remarks: made.remarks };
}

/** Drawings made dots: only the window has a canvas that draws them. */
function rastered(
  files: Parameters<typeof downloadMade>[0]["files"],
  dotsPerInch = USUAL_DOTS,
): Promise<Parameters<typeof downloadMade>[0]["files"]> {
  return Promise.all(
    files.map(async (file) => ({
      ...file,
      bytes: await rasterOfSvg(new TextDecoder().decode(file.bytes), dotsPerInch),
    })),
  );
}

/** Labels as they are until somebody chooses otherwise. */
export function usualLabels(units: "m" | "ft", isPackets: boolean): LabelChoice {
  const offset = storedOffset.load();
  return {
    size: usualLabelSize(units, isPackets),
    startAt: 1,
    hasQr: false,
    treatment: "",
    offset,
  };
}
