import type { Page } from 'playwright-core';

/** What a person would see go wrong in a page's layout, each in a line; empty where nothing does. */
export function layoutFaults(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const root = document.scrollingElement ?? document.documentElement;
    if (root.scrollWidth > innerWidth)
      faults.push(`the page is ${root.scrollWidth - innerWidth} px too wide`);
    const all: HTMLElement[] = [];
    const gather = (from: ParentNode): void => {
      for (const element of from.querySelectorAll<HTMLElement>('*')) {
        if (element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) all.push(element);
        if (element.shadowRoot !== null) gather(element.shadowRoot);
      }
    };
    gather(document);
    const named = (element: Element): string =>
      `<${element.localName}> “${(element.getAttribute('aria-label') ?? element.textContent).trim().replace(/\s+/g, ' ').slice(0, 40)}”`;
    /** What is for the ear alone, or lies unseen over what stands for it, is cut on purpose. */
    const isForEar = (element: Element): boolean => {
      const { clipPath, opacity } = getComputedStyle(element);
      return clipPath !== 'none' || opacity === '0' || element.getBoundingClientRect().width <= 2;
    };
    for (const element of all) {
      const ownText = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
      );
      if (!ownText || isForEar(element)) continue;
      const { overflowX, textOverflow } = getComputedStyle(element);
      const isCut = overflowX !== 'visible' && overflowX !== 'auto' && overflowX !== 'scroll';
      if (isCut && textOverflow !== 'ellipsis' && element.scrollWidth > element.clientWidth + 1)
        faults.push(`${named(element)} is cut by ${element.scrollWidth - element.clientWidth} px`);
      for (const word of brokenWords(element)) faults.push(`${named(element)} breaks “${word}” in two`);
    }
    const controls = all.filter(
      (element) => element.matches('button, a[href], input, select, textarea') && !isForEar(element),
    );
    for (const [index, one] of controls.entries()) {
      const a = one.getBoundingClientRect();
      const cutPx = one instanceof HTMLSelectElement ? chosenWidth(one) - a.width : 0;
      // One that takes the whole row has no more room to be had.
      if (cutPx > 1 && a.width < 0.8 * innerWidth)
        faults.push(`${named(one)} cuts what is chosen by ${Math.round(cutPx)} px`);
      if (one.scrollWidth > one.clientWidth + 2 && one.matches('button'))
        faults.push(`${named(one)} is too narrow for its words by ${one.scrollWidth - one.clientWidth} px`);
      for (const other of controls.slice(index + 1)) {
        const b = other.getBoundingClientRect();
        const acrossPx = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const downPx = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        // What stays in sight while the page scrolls lies over what scrolls below it.
        const stays = [one, other].some((control) => isFixed(control));
        if (acrossPx > 2 && downPx > 2 && !stays)
          faults.push(
            `${named(one)} and ${named(other)} lie over each other by ${Math.round(acrossPx)} × ${Math.round(downPx)} px`,
          );
      }
    }
    return faults;

    /** Words of the element's own text whose letters stand on two lines. */
    function brokenWords(element: Element): readonly string[] {
      return [...element.childNodes].flatMap((node) =>
        node.nodeType === Node.TEXT_NODE
          ? [...(node.textContent ?? '').matchAll(/\p{L}+/gu)].flatMap(({ 0: word, index }) => {
              const range = document.createRange();
              range.setStart(node, index);
              range.setEnd(node, index + word.length);
              const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
              return lines.size > 1 ? [word] : [];
            })
          : [],
      );
    }

    /** How wide a select would be for the chosen option alone, px; 0 where its letters are unseen and others stand there. */
    function chosenWidth(select: HTMLSelectElement): number {
      if (getComputedStyle(select).color === 'rgba(0, 0, 0, 0)') return 0;
      const alone = select.cloneNode() as HTMLSelectElement;
      alone.append(new Option(select.selectedOptions[0]?.text));
      Object.assign(alone.style, { position: 'absolute', inlineSize: 'max-content', maxInlineSize: 'none' });
      select.after(alone);
      const { width } = alone.getBoundingClientRect();
      alone.remove();
      return width;
    }

    function isFixed(element: Element): boolean {
      for (let at: Element | null = element; at !== null; at = at.parentElement ?? hostOf(at)) {
        if (['fixed', 'sticky'].includes(getComputedStyle(at).position)) return true;
      }
      return false;
    }

    function hostOf(element: Element): Element | null {
      const outer = element.getRootNode();
      return outer instanceof ShadowRoot ? outer.host : null;
    }
  });
}
