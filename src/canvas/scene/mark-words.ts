/** Words beside marks at the edge of the sheet. */

export const fromTheBeds = (name: string, distance: string) => `${name}, ${distance} from the beds`;
