/**
 * Runs inside the page, in any engine: finds what a person sees by role and name, through shadow trees, and writes down
 * what the page puts on the console. Plain JavaScript, because it is sent as text. Running it again changes nothing.
 */
(() => {
  if ('benchHand' in globalThis) return;

  /** @type {string[]} */
  const lines = [];
  addEventListener('error', (event) => lines.push(`error: ${event.message}`));
  addEventListener('unhandledrejection', (event) => lines.push(`rejected: ${String(event.reason)}`));
  document.addEventListener('securitypolicyviolation', (event) =>
    lines.push(`policy: ${event.effectiveDirective} ${event.blockedURI}`),
  );
  for (const level of /** @type {const} */ (['debug', 'log', 'info', 'warn', 'error'])) {
    const before = console[level].bind(console);
    /** @param {unknown[]} words */
    console[level] = (...words) => {
      lines.push(`${level}: ${words.map(String).join(' ')}`);
      before(...words);
    };
  }

  /**
   * @param {Document | ShadowRoot | Element} root
   * @returns {Generator<Element>} what is in it, in the order of the page
   */
  function* everything(root) {
    for (const element of root.children) {
      yield element;
      if (element.shadowRoot !== null) yield* everything(element.shadowRoot);
      yield* everything(element);
    }
  }

  const ROLES_OF_INPUTS = /** @type {Readonly<Record<string, string>>} */ ({
    range: 'slider',
    radio: 'radio',
    checkbox: 'checkbox',
    file: 'file',
  });
  const ROLES_OF_TAGS = /** @type {Readonly<Record<string, string>>} */ ({
    a: 'link',
    article: 'article',
    button: 'button',
    fieldset: 'group',
    nav: 'navigation',
    section: 'region',
    select: 'combobox',
    textarea: 'textbox',
  });

  /** @param {Element} element */
  function roleOf(element) {
    const given = element.getAttribute('role');
    if (given !== null) return given;
    if (element instanceof HTMLInputElement) return ROLES_OF_INPUTS[element.type] ?? 'textbox';
    return ROLES_OF_TAGS[element.localName] ?? '';
  }

  /** @param {string} text */
  const plain = (text) => text.replace(/\s+/g, ' ').trim();

  /** @param {Node} node @returns {string} its words, without those of fields in it */
  function ownWords(node) {
    if (node instanceof Text) return node.data;
    if (node instanceof HTMLSelectElement || node instanceof HTMLStyleElement) return '';
    return [...node.childNodes].map(ownWords).join('');
  }

  /** @param {Element} element */
  function nameOf(element) {
    const given = element.getAttribute('aria-label');
    if (given !== null) return plain(given);
    const labels = /** @type {Partial<HTMLInputElement>} */ (element).labels;
    if (labels && labels.length > 0) return plain([...labels].map(ownWords).join(' '));
    if (element instanceof HTMLFieldSetElement)
      return plain(element.querySelector('legend')?.textContent ?? '');
    return plain(element.textContent ?? '');
  }

  /** @param {Element} element @returns {string} all words in it, shadow trees included */
  function wordsIn(element) {
    /** @param {Node} node @returns {string} */
    const words = (node) => {
      if (node instanceof Text) return node.data;
      if (node instanceof HTMLStyleElement) return '';
      const inside = node instanceof Element ? (node.shadowRoot ?? node) : node;
      return [...inside.childNodes].map(words).join(' ');
    };
    return plain(words(element));
  }

  /** @param {Element} element */
  const isShown = (element) => element.getClientRects().length > 0;

  /** @param {string} role @param {RegExp} name @returns {Element[]} */
  const all = (role, name) =>
    [...everything(document)].filter(
      (element) => roleOf(element) === role && name.test(nameOf(element)) && isShown(element),
    );

  /** @param {string} role @param {RegExp} name */
  function find(role, name) {
    const [first] = all(role, name);
    return first ?? null;
  }

  /** @param {number} x @param {number} y @returns {Element | null} the innermost element there */
  function elementAt(x, y) {
    let found = document.elementFromPoint(x, y);
    for (;;) {
      const inner = found?.shadowRoot?.elementFromPoint(x, y) ?? null;
      if (inner === null || inner === found) return found;
      found = inner;
    }
  }

  const benchHand = {
    lines,
    find,
    wordsIn,
    isShown,

    /** @param {string} role @param {RegExp} name */
    count: (role, name) => all(role, name).length,

    /** @param {string} role @param {RegExp} name @returns {{ name: string, value: string }[]} */
    values: (role, name) =>
      all(role, name).map((element) => ({
        name: nameOf(element),
        value: /** @type {HTMLInputElement} */ (element).value,
      })),

    /**
     * Where to press it; null while it isn't there, is disabled, or something else lies over it.
     * @param {string} role @param {RegExp} name
     */
    place: (role, name) => {
      const element = find(role, name);
      if (element === null || element.matches(':disabled')) return null;
      element.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
      const box = element.getBoundingClientRect();
      const x = Math.round(box.x + box.width / 2);
      const y = Math.round(box.y + box.height / 2);
      const top = elementAt(x, y);
      const labels = /** @type {Partial<HTMLInputElement>} */ (element).labels ?? [];
      const isOnTop = [element, ...labels].some((one) => one.contains(top));
      return isOnTop ? { x, y } : null;
    },

    /** What would be typed over. @param {string} role @param {RegExp} name */
    select: (role, name) => {
      const field = /** @type {HTMLInputElement | null} */ (find(role, name));
      field?.focus();
      field?.select();
    },

    /** As a hand that drags it there at once. @param {RegExp} name @param {string} value */
    slide: (name, value) => {
      const slider = /** @type {HTMLInputElement | null} */ (find('slider', name));
      if (slider === null) return false;
      slider.value = value;
      slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      slider.dispatchEvent(new Event('change', { bubbles: true }));
      return true;
    },

    /** @param {RegExp} name @param {string} words  of the choice */
    choose: (name, words) => {
      const list = /** @type {HTMLSelectElement | null} */ (find('combobox', name));
      const option = [...(list?.options ?? [])].find((one) => plain(one.text) === words);
      if (list === null || option === undefined) return false;
      list.value = option.value;
      list.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      list.dispatchEvent(new Event('change', { bubbles: true }));
      return true;
    },

    /** Words of the innermost thing shown that says so; null where nothing does. @param {RegExp} pattern */
    said: (pattern) => {
      let said = null;
      for (const element of everything(document)) {
        if (element instanceof HTMLStyleElement || element instanceof HTMLScriptElement) continue;
        const words = plain(element.textContent ?? '');
        if (pattern.test(words) && isShown(element))
          said = said !== null && !words.includes(said) && !said.includes(words) ? said : words;
      }
      return said;
    },
  };
  Object.assign(globalThis, { benchHand });
})();
