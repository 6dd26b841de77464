export const inTurn: <Result>(lock: string, work: () => Promise<Result>) => Promise<Result>;
export const isReadOnly: (fault: NodeJS.ErrnoException) => boolean;
