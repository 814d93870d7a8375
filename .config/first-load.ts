/** Which modules the page cannot run without: those its entry imports, and what they import. */
import type { Rolldown } from "vite";

type NameOfChunk = (
  moduleId: string,
  context: { getModuleInfo: (id: string) => Rolldown.ModuleInfo | null },
) => string | null;

/**
 * Names the chunk of every module of the first load; the others find their place themselves. The
 * entry stays a file of its own: it waits for parts that are fetched, and they for this chunk.
 */
export function firstLoad(name: string, entry: string): NameOfChunk {
  let needed: ReadonlySet<string> | null = null;
  return (moduleId, context) => {
    needed ??= reachedFrom(entry, (id) => context.getModuleInfo(id)?.importedIds ?? []);
    return moduleId !== entry && needed.has(moduleId) ? name : null;
  };
}

function reachedFrom(
  entry: string,
  importedBy: (id: string) => readonly string[],
): ReadonlySet<string> {
  const reached = new Set([entry]);
  for (const id of reached) for (const imported of importedBy(id)) reached.add(imported);
  return reached;
}
