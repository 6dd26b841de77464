/** CellValueType of @univerjs/core, which is not loaded for its sake. */
export const cellKind = { text: 1, number: 2, boolean: 3, forcedText: 4 };
