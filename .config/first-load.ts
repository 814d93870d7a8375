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
  const isNeeded = reachFinder(entry);
  return (moduleId, context) => (moduleId !== entry && isNeeded(moduleId, context) ? name : null);
}

/** Names one chunk for a late part and all it cannot run without, as far as that lies nowhere yet. */
export function inOnePiece(name: string, part: string): NameOfChunk {
  const isNeeded = reachFinder(part);
  return (moduleId, context) => (isNeeded(moduleId, context) ? name : null);
}

function reachFinder(from: string): (...of: Parameters<NameOfChunk>) => boolean {
  let reached: ReadonlySet<string> | null = null;
  return (moduleId, context) => {
    reached ??= reachedFrom(from, (id) => context.getModuleInfo(id)?.importedIds ?? []);
    return reached.has(moduleId);
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
