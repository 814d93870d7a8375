/** What the thread that makes paper is asked, and what it answers. */
import type { PrintSettings } from "../../core/files/print-set.ts";
import type { PrintId } from "../../core/files/print-list.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { PaperName } from "../../core/page/paper.ts";

/** One PDF of some parts. */
export interface WantedPdf {
  readonly name: string;
  readonly title: string;
  readonly ids: readonly PrintId[];
}

export type PaperJob =
  | {
      readonly what: "print";
      readonly parts: readonly PrintId[];
      readonly settings: Omit<PrintSettings, "printedAt">;
      /** Pages as pictures to look at, or PDFs. */
      readonly wants: "pages" | readonly WantedPdf[];
    }
  | {
      readonly what: "file";
      /** Id of one of the files for others. */
      readonly format: string;
      readonly labels: LabelChoice;
      readonly leftOut: readonly string[];
      /** Ids of the lots wanted; null: all. */
      readonly lots: readonly string[] | null;
      /** Begins with the mark that tells spreadsheets the text is UTF-8. */
      readonly hasMark: boolean;
    }
  | {
      /** Whether a face can be used; what it still lacks is among the remarks. */
      readonly what: "face";
      readonly bytes: Uint8Array;
    }
  | {
      readonly what: "compare";
      readonly layoutIds: readonly string[];
      readonly paper: PaperName;
      readonly isOverlaid: boolean;
    };

export interface PaperRequest {
  readonly plan: Plan;
  readonly layoutId: string;
  /** Day the plan is read on as grown; null: as planned. */
  readonly grownOn: number | null;
  /** Local date and time, `2027-03-02 09:40`. */
  readonly printedAt: string;
  /** The same moment in UTC, `20270302T094000Z`. */
  readonly stamp: string;
  /** The grower's own face, as a file; null: none. */
  readonly extraFace: Uint8Array | null;
  readonly job: PaperJob;
}

export interface PaperProgress {
  readonly kind: "progress";
  readonly done: number;
  readonly total: number;
}

export interface PaperFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Null where it is not made of pages. */
  readonly pages: number | null;
  readonly mimeType: string;
}

export interface ShownPart {
  readonly id: PrintId;
  /** Each page as an SVG file. */
  readonly pages: readonly { readonly name: string; readonly svg: string }[];
  readonly remarks: readonly string[];
}

export interface PaperMade {
  readonly kind: "answer";
  readonly remarks: readonly string[];
  readonly parts: readonly ShownPart[];
  readonly files: readonly PaperFile[];
}

export type PaperAnswer = PaperMade | { readonly kind: "failed"; readonly reason: string };
