export function drawIcons(): ReadonlyMap<string, Buffer>;
