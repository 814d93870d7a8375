/** A tool that is fetched when it is first taken up. */
import type { SheetPointer, Tool } from "./tool.ts";

const NOTHING = () => undefined;

/**
 * Stands for the tool until it is there. A press made meanwhile is not lost: where it was let go
 * the tool is pressed once it has come.
 */
export function laterTool(cursor: string, load: () => Promise<Tool>): Tool {
  let tool: Tool | null = null;
  let isTaken = false;
  const fetch = async (): Promise<Tool | null> => {
    tool ??= await load().catch(() => null);
    return tool;
  };
  const pressLater = async (start: SheetPointer, end: SheetPointer) => {
    const gesture = (await fetch())?.press(start);
    if (isTaken) gesture?.end(end);
  };
  const takeLater = async () => {
    const loaded = await fetch();
    if (isTaken) loaded?.take?.();
  };
  return {
    cursor,
    press: (start) =>
      tool?.press(start) ?? {
        move: NOTHING,
        end: (pointer) => void pressLater(start, pointer),
        cancel: NOTHING,
      },
    hover: (pointer) => tool?.hover(pointer),
    key: (key) => tool?.key(key) ?? false,
    take: () => {
      isTaken = true;
      void takeLater();
    },
    leave: () => {
      isTaken = false;
      tool?.leave();
    },
  };
}
