import type { Page } from "playwright-core";

/** Drops a file on the page, as from a file manager. */
export async function dropFile(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([fileName, content]) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content ?? ""], fileName ?? ""));
      document.body.dispatchEvent(
        new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer }),
      );
    },
    [name, text],
  );
}
