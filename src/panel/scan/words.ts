/** Words of scan on the screen. */

export const scanPacketStake = "Scan a packet or stake";
export const orTypeTheCode = "Or type the code";
export const open = "Open";
export const whatTheCameraSees = "What the camera sees";
export const holdSquareCodePacket =
  "Hold the square code of a packet or stake before the camera. The picture stays in this browser.";
export const notPlanNorAny = (join: string | number) =>
  `${join}: not in this plan, nor in any of its layouts. The label may be of another plan or an earlier season: plots of other seasons bear the same codes.`;
export const notSownLotPacket = (code: string | number) =>
  `${code} is not sown from that lot. A packet names the plot it was harvested from.`;
export const openLot = (code: string | number) => `Open lot ${code}`;
export const lineOf = (code: string | number) => `Line of ${code}`;
export const show = "Show ";
export const plot = "plot";
export const bed = "bed";
export const inTheLayout = (name: string | number) => ` in the layout ${name}`;
export const walkTo = (code: string | number) => `Walk to ${code}`;
export const scanAgain = "Scan again";
export const walkSown = (code: string | number) => `Walk to ${code}, sown from it`;
