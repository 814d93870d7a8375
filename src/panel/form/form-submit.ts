import type { FormEvent } from "react";

/**
 * Sends a form of draft fields off, unless one still holds something that cannot be used: then
 * that field gets the focus and nothing happens.
 */
export function onFormSubmit(send: () => void): (event: FormEvent<HTMLFormElement>) => void {
  return (event) => {
    event.preventDefault();
    const bad = event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (bad) bad.focus();
    else send();
  };
}
