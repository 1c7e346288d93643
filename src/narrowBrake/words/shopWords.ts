export function shopWords(_: unknown): any { return {}; }
