/**
 * A first remark in chunks by which a browser compiles all its functions while it comes, on
 * another thread, instead of each when it is first called, on the window's. It pays for what is
 * mostly run at the start. A browser that does not know the remark passes it over.
 */
import type { Plugin } from "vite";

const REMARK = "//# allFunctionsCalledOnLoad\n";

/** @param chunks their names */
export function compiledOnTheWay(chunks: readonly string[]): Plugin {
  return {
    name: "wideberth-compiled-on-the-way",
    apply: "build",
    enforce: "post",
    generateBundle: {
      // After whatever puts lines of its own first.
      order: "post",
      handler(_options, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.type !== "chunk" || !chunks.includes(file.name)) continue;
          file.code = REMARK + file.code;
          const map = bundle[`${file.fileName}.map`];
          if (map?.type === "asset") map.source = oneLineDown(String(map.source));
        }
      },
    },
  };
}

function oneLineDown(text: string): string {
  const map = JSON.parse(text) as { mappings: string };
  return JSON.stringify({ ...map, mappings: `;${map.mappings}` });
}
