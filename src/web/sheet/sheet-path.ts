// Where the sheet stands on this page. Leaves out what its address asks.

export const SHEET_PATH = '/sheet'
