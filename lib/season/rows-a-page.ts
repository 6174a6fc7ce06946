/** Rows of the season's ledger on one page. */
export const rowsAPage = 50
