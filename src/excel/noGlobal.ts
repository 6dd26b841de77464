/** Stands for `globalThis`, which ES2016 has not, where zod keeps what several copies of it would share. */
export const noGlobal: Record<string, unknown> = {};
