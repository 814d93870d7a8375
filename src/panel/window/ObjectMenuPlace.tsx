import { Suspense, lazy } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import * as texts from "./words.ts";

const ObjectMenu = lazy(async () => {
  const { ObjectMenu: Loaded } = await import("./ObjectMenu.tsx");
  return { default: Loaded };
});

/** Where the menu of objects comes up when the sheet, a table or the particulars ask for it. */
export function ObjectMenuPlace() {
  const request = useWindowStore((state) => state.menuRequest);
  if (!request) return null;
  return (
    <section aria-label={texts.menu}>
      <Suspense fallback={null}>
        <ObjectMenu request={request} />
      </Suspense>
    </section>
  );
}
