/** Functions lately opened and marked as favourites, in the pane's own storage on this computer; nothing else is kept. */
const place = "oxygen-functions";
const mostRecent = 8;

interface Kept {
  recent: string[];
  favourites: string[];
}

const isList = (value: unknown): value is string[] =>
  Array.isArray(value) && value.every((each) => typeof each === "string");

/** A browser may have no storage, or forbid it: then nothing is kept. */
const read = (): Kept => {
  try {
    const { recent, favourites } = JSON.parse(localStorage.getItem(place) ?? "{}") as Partial<Kept>;
    return { recent: isList(recent) ? recent : [], favourites: isList(favourites) ? favourites : [] };
  } catch {
    return { recent: [], favourites: [] };
  }
};

const write = (kept: Kept): void => {
  try {
    localStorage.setItem(place, JSON.stringify(kept));
  } catch {
    // Not kept.
  }
};

export const recent = (): string[] => read().recent;
export const favourites = (): string[] => read().favourites;
export const isFavourite = (id: string): boolean => favourites().includes(id);

export const noteOpened = (id: string): void => {
  const kept = read();
  write({ ...kept, recent: [id, ...kept.recent.filter((each) => each !== id)].slice(0, mostRecent) });
};

/** Marks or unmarks; gives whether it is marked now. */
export const toggleFavourite = (id: string): boolean => {
  const kept = read();
  const marked = kept.favourites.includes(id);
  write({ ...kept, favourites: marked ? kept.favourites.filter((each) => each !== id) : [...kept.favourites, id] });
  return !marked;
};
