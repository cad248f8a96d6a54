#include "support/receiver.hpp"

#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

#include <memory>
#include <stdexcept>

namespace nutward::test {

namespace {

template <auto Free>
struct Freed {
  template <class T>
  void operator()(T* p) const {
    Free(p);
  }
};
using Bio = std::unique_ptr<BIO, Freed<BIO_free_all>>;

std::string content(const Bio& bio) {
  char* data = nullptr;
  const long size = BIO_get_mem_data(bio.get(), &data);
  return {data, static_cast<std::size_t>(size)};
}

} // namespace

Certificate make_certificate(const std::string& address) {
  const std::unique_ptr<EVP_PKEY, Freed<EVP_PKEY_free>> key(EVP_EC_gen("P-256"));
  const std::unique_ptr<X509, Freed<X509_free>> x(X509_new());
  if (!key || !x) throw std::runtime_error("no certificate");
  X509_set_version(x.get(), 2); // counted from 0: version 3
  ASN1_INTEGER_set(X509_get_serialNumber(x.get()), 1);
  X509_gmtime_adj(X509_getm_notBefore(x.get()), -3600);
  X509_gmtime_adj(X509_getm_notAfter(x.get()), 86400);
  X509_set_pubkey(x.get(), key.get());
  X509_NAME* name = X509_get_subject_name(x.get());
  X509_NAME_add_entry_by_txt(name, "CN", MBSTRING_ASC, reinterpret_cast<const unsigned char*>("test"), -1, -1,
                             0);
  X509_set_issuer_name(x.get(), name);
  const std::unique_ptr<X509_EXTENSION, Freed<X509_EXTENSION_free>> names(
      X509V3_EXT_conf_nid(nullptr, nullptr, NID_subject_alt_name, ("IP:" + address).c_str()));
  X509_add_ext(x.get(), names.get(), -1);
  if (X509_sign(x.get(), key.get(), EVP_sha256()) == 0) throw std::runtime_error("no signature");

  const Bio certificate(BIO_new(BIO_s_mem())), secret(BIO_new(BIO_s_mem()));
  PEM_write_bio_X509(certificate.get(), x.get());
  PEM_write_bio_PrivateKey(secret.get(), key.get(), nullptr, nullptr, 0, nullptr, nullptr);
  return {content(certificate), content(secret)};
}

} // namespace nutward::test
