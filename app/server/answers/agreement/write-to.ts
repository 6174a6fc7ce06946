import 'server-only'
import { env } from '../../start/env'

/** The mail address to which a client writes about records: the one that our mails come from, without a name before it. */
export const writeTo = (): string => /<([^<>]+)>/.exec(env().mailFrom)?.[1] ?? env().mailFrom
