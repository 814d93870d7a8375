/**
 * The licences of what is built into the site and the command line, in one text beside them: most
 * ask for no more than that their words go along.
 */
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

export const LICENCES_FILE = "licences.txt";

/** Folders of packages met while building; workers are built by themselves, before the page. */
const met = new Set<string>();

/** Faces of type, which the styles name and no module imports. */
const FACES = [
  "@fontsource-variable/source-sans-3",
  "@fontsource-variable/source-code-pro",
  "@fontsource/source-serif-4",
];

/** To be given to workers too, whose modules the page's own build does not see. */
export function licences(): Plugin {
  return {
    name: "wideberth-licences",
    apply: "build",
    generateBundle(_, bundle) {
      for (const name of FACES) met.add(join(import.meta.dirname, "../node_modules", name));
      for (const file of Object.values(bundle)) {
        if (file.type !== "chunk") continue;
        for (const id of file.moduleIds) {
          const folder = packageOf(id);
          if (folder !== null) met.add(folder);
        }
      }
      if (this.environment.config.isWorker) return;
      this.emitFile({ type: "asset", fileName: LICENCES_FILE, source: licenceText() });
    },
  };
}

/** Folder of the package a module is of; null for our own. */
function packageOf(id: string): string | null {
  const marker = "/node_modules/";
  const at = id.lastIndexOf(marker);
  if (at < 0) return null;
  const parts = id.slice(at + marker.length).split("/");
  const name = parts.slice(0, parts[0]?.startsWith("@") === true ? 2 : 1).join("/");
  return `${id.slice(0, at).replace("\0", "")}${marker}${name}`;
}

function licenceText(): string {
  const parts = [...met].map((folder) => {
    const { name, version, license } = JSON.parse(
      readFileSync(join(folder, "package.json"), "utf8"),
    ) as Readonly<Record<"name" | "version" | "license", string | undefined>>;
    const texts = readdirSync(folder)
      .filter((file) => /^(licen[cs]e|copying|notice|ofl)/i.test(file))
      .map((file) => readFileSync(join(folder, file), "utf8").trim());
    return { name: name ?? folder, version, license, texts };
  });
  parts.sort((a, b) => (a.name < b.name ? -1 : 1));
  const words = parts.map(({ name, version, license, texts }) =>
    [`${name} ${version}, ${license ?? "licence not named"}`, ...texts].join("\n\n"),
  );
  return `Wideberth is under the MIT licence. Built into it:\n\n${words.join(`\n\n${"-".repeat(72)}\n\n`)}\n`;
}
