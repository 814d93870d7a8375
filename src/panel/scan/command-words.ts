/** Commands of scan: their names, further words they are found by, and why they cannot be used. */

export const scanCode = "Scan a packet or stake";
export const scanCodeAlso = "camera square code open lot plot";
