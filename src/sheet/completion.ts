import type { Injector } from "@univerjs/core";
import { FunctionType } from "@univerjs/engine-formula";
import { IDescriptionService, type ISearchItemWithType } from "@univerjs/sheets-formula";

/** A place beyond a list's ends has its first item. */
const withoutEnds = <Item>(items: Item[]): Item[] =>
  new Proxy(items, {
    get: (list, key, receiver): unknown => {
      const isPlace = typeof key === "string" && /^-?\d+$/.test(key);
      return isPlace && list[Number(key)] === undefined ? list[0] : Reflect.get(list, key, receiver);
    },
  });

/**
 * The completion shows the first ten of the list it is given; this one can't be cut, since its box scrolls. Univer 0.25.1
 * keeps the marked place when the list gets shorter, and takes from there.
 */
class WholeList<Item> extends Array<Item> {
  override slice(): Item[] {
    return withoutEnds([...this]);
  }
}

const most = 80;

/**
 * Completion looks at the start of a name only, so "=HOURS" would never find OXYGEN.HOURS_TO_FILL. This adds, after the
 * names that start with what is typed, the add-in's functions that have it anywhere, and shows more than ten.
 */
export const completeByPlainName = (injector: Injector, namespace: string): void => {
  const service = injector.get(IDescriptionService);
  const byStart = service.getSearchListByNameFirstLetter.bind(service);
  service.getSearchListByNameFirstLetter = (typed) => {
    const wanted = typed.trim().toUpperCase();
    const found = byStart(typed);
    const ours: ISearchItemWithType[] =
      wanted.length < 2
        ? []
        : service
            .getSearchListByType(FunctionType.User)
            .filter(({ name }) => name.startsWith(`${namespace}.`) && name.slice(namespace.length + 1).includes(wanted))
            .filter(({ name }) => !found.some((other) => other.name === name))
            .map((item) => ({ ...item, functionType: FunctionType.User }));
    return WholeList.from([...found, ...ours].slice(0, most)) as WholeList<ISearchItemWithType>;
  };
};

const list = 'ul[data-u-comp="sheets-formula-editor"]';
const shownChoice = `${list} > li[class~="univer-bg-gray-200"]`;

/** Says the marked line of the completion's list, which screen readers get no sign of otherwise. */
export const speakCompletion = (say: (words: string) => void): void => {
  let said = "";
  new MutationObserver(() => {
    const choice = document.querySelector(shownChoice) ?? document.querySelector(`${list} > li`);
    const [name, words] = [...(choice?.children ?? [])].map((part) => part.textContent ?? "");
    const now = choice ? `${name}: ${words} Enter takes it.` : "";
    if (now !== said && now !== "") say(now);
    said = now;
  }).observe(document.body, { subtree: true, childList: true, attributeFilter: ["class"] });
};
