'use client'
import { Told } from './ui/told'

export default function NotFound() {
	return <Told title="Not found" says="There is nothing here, or nothing that you may see." />
}
