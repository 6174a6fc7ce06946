export default function Page() {
	return <main>Bare</main>
}
