import { config } from 'zod'

// The policy of our pages lets nothing be made of text: not even tried, since a try is told as a breach of it.
if (typeof window !== 'undefined') config({ jitless: true })
