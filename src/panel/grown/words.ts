/** Words of grown on the screen. */

export const harvestIntoALot = "Harvest into a lot ...";
export const asGrownOn = (longDate: string | number) => `As grown on ${longDate}. `;
export const asPlanned = "As planned";
export const readAsGrownOn = (day: string) => `Read as grown on ${day}.`;
export const readAsPlanned = "Read as planned.";
