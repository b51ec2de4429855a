"""A shop reached over TLS alone, with a certificate that the test makes itself: who shows another, or asks for another name, is refused in a
sentence, and nothing goes over the network unprotected.

usage: tls.py CROWD"""
import pathlib
import shutil
import subprocess
import sys
import tempfile

import replica

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "oracles"))
import cluster as servers  # noqa: E402
import judging  # noqa: E402


def openssl(*words):
    subprocess.run(["openssl", *map(str, words)], check=True, capture_output=True)


def authority(folder, name):
    openssl("req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", f"/CN={name}", "-keyout", folder / f"{name}.key", "-out",
            folder / f"{name}.crt")
    return folder / f"{name}.crt"


def certificate(folder, by, host):
    """The server's key and its certificate for that host alone, as one that `by` has signed."""
    (folder / "names").write_text(f"subjectAltName=DNS:{host}")
    openssl("req", "-newkey", "rsa:2048", "-nodes", "-subj", f"/CN={host}", "-keyout", folder / "server.key", "-out", folder / "server.csr")
    openssl("x509", "-req", "-days", "2", "-in", folder / "server.csr", "-CA", by, "-CAkey", by.with_suffix(".key"), "-CAcreateserial", "-extfile",
            folder / "names", "-out", folder / "server.crt")


def tried(crowd, store):
    """Whether a shop could be opened there, and what was said."""
    done = subprocess.run([crowd, "check", store, "/dev/null"], capture_output=True, text=True)
    return done.returncode == 0, done.stderr.strip()


def main():
    if not shutil.which("openssl"):
        judging.skip("openssl", "the openssl program")
    crowd, port = sys.argv[1], replica.free_port()
    with tempfile.TemporaryDirectory(prefix="tls-") as name:
        folder = pathlib.Path(name)
        root, other = authority(folder, "shop-root"), authority(folder, "another-root")
        certificate(folder, root, "localhost")
        made = servers.Cluster(replica.loopback(port))
        try:
            for file in ("server.key", "server.crt"):
                shutil.copy(folder / file, made.data / file)
                (made.data / file).chmod(0o600)
                shutil.chown(made.data / file, made.data.owner())
            (made.data / "pg_hba.conf").write_text("local all all trust\nhostssl all all 127.0.0.1/32 trust\nhostnossl all all all reject\n")
            made.settings += " -c ssl=on"
            made.start()
            made.run("psql", "-X", "-q", "-h", made.folder, "-p", port, "-U", "judge", "-d", "postgres", input="CREATE DATABASE shop")
            address = f"postgresql://judge@%s:{port}/shop?sslmode=%s&sslrootcert=%s"
            whole = address % ("localhost", "verify-full", root)
            subprocess.run([crowd, "make", whole], check=True)
            wrong = []
            for what, store, opens, says in (
                    ("the shop's own root", whole, True, ""),
                    ("its root, and no name asked for", address % ("127.0.0.1", "verify-ca", root), True, ""),
                    ("another root", address % ("localhost", "verify-full", other), False, "certificate"),
                    ("a name that the server's certificate has not", address % ("127.0.0.1", "verify-full", root), False, "127.0.0.1"),
                    ("no protection", address % ("localhost", "disable", root), False, "rejects"),
                    ("a root that is not there", address % ("localhost", "verify-full", folder / "none.crt"), False, "none.crt")):
                opened, said = tried(crowd, store)
                print(f"{what}: {'opened' if opened else said}", flush=True)
                if opened != opens or says not in said or (not opens and "cannot be reached" not in said):
                    wrong.append(what)
            made.stop()
            return 1 if wrong else 0
        finally:
            shutil.rmtree(made.folder, ignore_errors=True)


if __name__ == "__main__":
    sys.exit(main())
