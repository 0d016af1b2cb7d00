// How the charts of the page look alike: ink, lettering and grid.

const INK = '#1f2428';
const GRID = '#dddddd';
const FONT = '13px system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif';

/** An axis, to which each chart adds what it shows. */
export const AXIS = { stroke: INK, font: FONT, grid: { stroke: GRID, width: 1 }, ticks: { stroke: GRID, width: 1 }, labelFont: FONT, labelSize: 22 };
