import { fileURLToPath } from 'node:url'

/** The least that this version of Next serves: what the client's page is measured against. */
export default { turbopack: { root: fileURLToPath(new URL('../../..', import.meta.url)) }, agentRules: false }
