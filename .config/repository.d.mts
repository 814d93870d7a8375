export const repository: string;
export function tool(name: string): string;
