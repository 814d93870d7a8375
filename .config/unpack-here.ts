/**
 * Lets the PDF library unpack PNG pictures in the built site. Its decoder (png-js) asks fflate to
 * unpack on a worker made of text, which the page's policy forbids, and then waits for ever. It is
 * given the same unpacking done at once; core/map/picture-mark.ts bounds the dots.
 */
import type { Plugin } from "vite";

const UNPACK = "\0unpack-here";

const CODE = `
import { unzlibSync } from "fflate";
export function unzlib(data, done) {
  let dots;
  try {
    dots = unzlibSync(data);
  } catch (error) {
    done(error);
    return;
  }
  done(null, dots);
}
`;

export function unpackHere(): Plugin {
  let importerOfFflate: string | undefined;
  return {
    name: "unpack-here",
    enforce: "pre",
    resolveId(source, importer) {
      if (source !== "fflate") return null;
      if (importer === UNPACK) return this.resolve(source, importerOfFflate, { skipSelf: true });
      if (!importer?.includes("/png-js/")) return null;
      importerOfFflate = importer;
      return UNPACK;
    },
    load: (id) => (id === UNPACK ? CODE : null),
  };
}
