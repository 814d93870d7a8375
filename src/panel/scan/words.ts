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
export const readerNotLoaded = "The reader could not be loaded. Type the code.";
export const cameraNotAllowed =
  "The browser was not allowed to use the camera. Allow it for this page, or type the code.";
export const noCamera = "No camera was found. Type the code.";
export const cameraInUse = "The camera is in use by another program. Close that, or type the code.";
export const cameraNeedsHttps =
  "Browsers give the camera to pages over https only, and this one came over plain http. Type the code.";
export const cameraUnusable = "The camera cannot be used here. Type the code.";
