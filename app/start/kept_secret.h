#pragma once
// A few bytes that nobody else may read: in the system's keyring where there is one.
#include <QByteArray>
#include <QString>

#include "core/problem.h"

namespace wm::app {

/// The file of a secret: what it is called in sentences ("This computer's secret"), what to do where the
/// keyring has lost it, and whether some bytes can be one: what lies there and is something else is left as
/// it is.
struct SecretFile {
  QString path;
  const char *called, *lost;
  bool (*can_be)(const QByteArray&);
};

/// What is kept there: in the system's keyring, which the file then says; where there is none, in the file,
/// which only its owner may read, and out of it as soon as there is one. Refuses where it cannot be read.
Expected<QByteArray> read_secret(const SecretFile& file);
/// Into the file first: nothing may rest on a secret that is then lost. False where nothing can be written.
bool keep_secret(const SecretFile& file, const QByteArray& secret);

}  // namespace wm::app
