/** Hands the focus back to the drawing, from a button beside it that is about to go. */
export function focusSheet(from: Element): void {
  from.closest(".sheet-holder")?.querySelector<HTMLElement>(".sheet")?.focus();
}
