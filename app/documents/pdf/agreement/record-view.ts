import { type AgreementDocument, documentHash } from '@/lib/agreement/document/document'
import { type RecordLine, recordOf } from '@/lib/agreement/signing/record-of'
import { grouped } from '@/lib/agreement/verify/pasted-hash'
import { isHash } from '@/lib/record/is-hash'
import type { Drawing } from '../drawing'
import type { Signed } from './input'

const line = (of: string, ...says: string[]): RecordLine => ({ of, says })

function whatWasSigned(document: AgreementDocument): RecordLine[] {
	const { agreement, number, supersedes } = document
	return [
		line('Agreement', agreement),
		line('Issue', supersedes === null ? `${number}, the first` : `${number}, in the place of ${grouped(supersedes)}`),
		line('Hash of the text', grouped(documentHash(document)), 'SHA-256 of its canonical JSON (RFC 8785)'),
	]
}

/** The last page: what was signed, each signature, and where the record stood. */
export function recordView(document: AgreementDocument, { signatures, head }: Signed, timeZone: string, of: Drawing) {
	const drawn = ({ title, lines }: { title: string; lines: readonly RecordLine[] }) => ({
		title,
		lines: lines.map(({ of: name, says }) => ({
			of: name,
			says: says.map((text) => (isHash(text) ? grouped(text) : of.sayWhole(text))),
		})),
	})
	return [
		drawn({ title: 'What was signed', lines: whatWasSigned(document) }),
		...signatures.map((signature) => drawn(recordOf(signature, timeZone))),
		drawn({
			title: 'The head of the record when this was signed',
			lines: [line('Line', String(head.seq)), line('Hash', head.hash)],
		}),
	]
}
export type RecordView = ReturnType<typeof recordView>
