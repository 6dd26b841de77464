export declare const seed: number;
