/** Where a client's page for the kerb is found. */
export const clientPath = (client: string) => `/studio/clients/${client}/kerb`
