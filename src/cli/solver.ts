/** The solver of mixed-integer programs, carried inside the built program. Unpacked when asked for. */
import loadHighs, { type Highs } from "highs";
import { usage } from "./options.ts";

export async function loadSolver(): Promise<Highs> {
  const { default: dataUrl } = await import("highs/runtime?url&inline");
  const code = Buffer.from(dataUrl.slice(dataUrl.indexOf(",") + 1), "base64");
  const options = {
    locateFile: (file: string) => file,
    // Emscripten's own hook: the loader's option of the bytes themselves is not heeded on Node.
    instantiateWasm: (
      imports: WebAssembly.Imports,
      take: (instance: WebAssembly.Instance) => void,
    ) => {
      void WebAssembly.instantiate(code, imports).then(({ instance }) => take(instance));
      return {};
    },
  };
  return loadHighs(options);
}

/** Longest time a proof may be asked to take, seconds: an hour. */
const MOST_SECONDS = 3600;

/** Seconds given to the solver; undefined where no proof was asked for. */
export function secondsToProve(command: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const seconds = Number(text);
  if (text.trim() !== "" && seconds > 0 && seconds <= MOST_SECONDS) return seconds;
  throw usage(
    command,
    `Got --prove ${text}, expected seconds, more than 0 and up to ${MOST_SECONDS}`,
  );
}
