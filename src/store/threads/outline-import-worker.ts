/** Reads one file of outlines on its own thread and sends back what it holds. */
import { readTraces } from "../../core/outlines/read-traces.ts";

export interface OutlineRequest {
  readonly text: string;
  readonly file: string;
}

addEventListener("message", ({ data }: MessageEvent<OutlineRequest>) => {
  postMessage(readTraces(data.text, data.file));
});
