/** Reads a file of outlines; a large one on a thread of its own, so that the window stays awake. */
import { readTraces } from "../../core/outlines/read-traces.ts";
import type { Trace } from "../../core/outlines/trace.ts";
import { type Read, refuse } from "../../core/model/problem.ts";
import { textOfFile } from "../files/decode-file.ts";
import { askWorker } from "./ask-worker.ts";
import type { OutlineRequest } from "./outline-import-worker.ts";
import * as words from "../files/words.ts";

/** Letters that are read at once, without a thread: some milliseconds even of the worst kind. */
const SMALL = 20_000;

export async function readOutlineFile(file: File): Promise<Read<readonly Trace[]>> {
  const text = await textOfFile(file, words.outlineFile, true);
  if (!text.ok) return text;
  return text.value.length <= SMALL
    ? readTraces(text.value, file.name)
    : readApart({ text: text.value, file: file.name });
}

function readApart(request: OutlineRequest): Promise<Read<readonly Trace[]>> {
  const worker = new Worker(new URL("./outline-import-worker.ts", import.meta.url), {
    type: "module",
  });
  return new Promise((resolve) => {
    askWorker<Read<readonly Trace[]>>(worker, request, {
      onAnswer: resolve,
      onFault: (reason) =>
        resolve(
          refuse({
            file: request.file,
            object: "",
            field: "",
            got: reason || words.faultWhileReading,
            expected: words.outlineFile,
          }),
        ),
    });
  });
}
