/**
 * Names in the head of the page what comes beside the first chunk. Asked for by script it would
 * come only after that, and what it stands on after it, one by one; faces of type asked for by the
 * first picture come after it, and move what they set.
 */
import type { HtmlTagDescriptor, Plugin, Rolldown } from "vite";

export interface AtOnce {
  /** Absolute paths of modules that are imported dynamically. */
  readonly parts: readonly string[];
  /** File names of faces without their ending, as the packages have them. */
  readonly faces: readonly string[];
}

type Bundle = readonly (Rolldown.OutputChunk | Rolldown.OutputAsset)[];

export function fetchedAtOnce({ parts, faces }: AtOnce): Plugin {
  return {
    name: "wideberth-fetched-at-once",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: (html, { bundle = {} }) => {
        const files = Object.values(bundle);
        const tags = [
          ...parts.flatMap((part) => partTags(part, files)),
          ...faces.map((face) => faceTag(face, files)),
        ];
        return tags.filter(({ attrs }) => !html.includes(String(attrs?.["href"])));
      },
    },
  };
}

/** Links to the part's chunk, to all it cannot run without, and to their sheets of style. */
function partTags(part: string, files: Bundle): readonly HtmlTagDescriptor[] {
  const chunks = files.filter((file) => file.type === "chunk");
  const own = chunks.find(({ facadeModuleId }) => facadeModuleId === part);
  if (!own) throw new Error(`${part} is no late part of the site.`);
  const needed = new Set([own]);
  for (const { imports } of needed) {
    for (const chunk of chunks) if (imports.includes(chunk.fileName)) needed.add(chunk);
  }
  const sheets = [...needed].flatMap(({ viteMetadata }) => [...(viteMetadata?.importedCss ?? [])]);
  return [
    ...[...needed].map(({ fileName }) => link(fileName, { rel: "modulepreload" })),
    ...sheets.map((fileName) => link(fileName, { rel: "stylesheet" })),
  ];
}

function faceTag(face: string, files: Bundle): HtmlTagDescriptor {
  const file = files.find(({ fileName }) => fileName.includes(`${face}-`));
  if (!file) throw new Error(`${face} is no face of the site.`);
  // Over a slow line the script goes first: words are set in the system's faces until then.
  const attrs = { rel: "preload", as: "font", type: "font/woff2", fetchpriority: "low" };
  return link(file.fileName, attrs);
}

function link(fileName: string, attrs: Readonly<Record<string, string>>): HtmlTagDescriptor {
  return {
    tag: "link",
    attrs: { ...attrs, crossorigin: true, href: `./${fileName}` },
    injectTo: "head",
  };
}
