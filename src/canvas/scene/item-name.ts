/** What the objects of the sheet are called where there is little room. */
import type { SheetItem } from "./sheet-items.ts";
import * as words from "./tool-words.ts";

/** What an object is called beside a guide. */
export function nameOf(item: SheetItem): string {
  switch (item.what) {
    case "planting":
      return item.planting.code;
    case "bed":
      return words.bedNamed(item.bed.code);
    case "surrounding":
      return item.surrounding.label;
  }
}
