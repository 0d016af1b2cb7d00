// Units at the edge of the page, by the table that the program sends: shown = SI value times factor plus offset.

let table = {};
let system = 'shop';

export function learn(quantities) {
  table = quantities;
}

/** Whether the program has told them yet: before that, nothing can be shown. */
export const known = () => system in table;

export const systems = () => Object.keys(table);

export function use(other) {
  system = other;
}

export const inUse = () => system;

const of = (quantity) => table[system][quantity];

/** Word of the unit. */
export const unit = (quantity) => of(quantity).unit;

/** A value in SI as the number that is shown, not rounded. */
export const toShown = (quantity, si) => si * of(quantity).factor + of(quantity).offset;

/** The SI value of a number that was typed. */
export const toSi = (quantity, shown) => (shown - of(quantity).offset) / of(quantity).factor;

/** Decimals that are shown. */
export const decimals = (quantity) => of(quantity).decimals;

/** Rounded, without its unit. */
export function number(quantity, si) {
  if (si === null || si === undefined || Number.isNaN(si)) {
    return '-';
  }
  return rounded(toShown(quantity, si), decimals(quantity));
}

/** Without a minus before a nil. */
function rounded(value, places) {
  const text = value.toFixed(places);
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}

/** Rounded, with its unit, in another system than the page's. */
export function saidIn(other, quantity, si) {
  const own = table[other][quantity];
  return rounded(si * own.factor + own.offset, own.decimals) + ' ' + own.unit;
}

/** Two values that differ, so that they are seen to: with a decimal more where they would read the same. */
export function apart(quantity, one, other) {
  const places = decimals(quantity);
  const texts = (more) => [one, other].map((si) => rounded(toShown(quantity, si), places + more) + ' ' + unit(quantity));
  const [a, b] = texts(0);
  return one < other && a === b ? texts(1) : [a, b];
}

/** Rounded, with its unit. */
export const said = (quantity, si) => number(quantity, si) + (si === null || si === undefined ? '' : ' ' + unit(quantity));

const KELVIN = 273.15;

/** Temperatures come in degrees Celsius. */
export const celsius = { toSi: (c) => c + KELVIN, fromSi: (k) => k - KELVIN };
